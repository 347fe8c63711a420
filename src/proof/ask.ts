import type { Flow } from '../../machines/rows.ts';
import type { Rig } from '../rig/rig.ts';
import { outcomeOf } from '../steps/outcome.ts';
import type { Answer, Facts, Situation, Step } from '../steps/step.ts';
import type { Remedy, Verdict } from '../verdicts/verdict.ts';
import { startOf } from './standing.ts';

/** One question on the way to a verdict. */
export interface Asked {
  readonly step: Step;
  readonly answer: Answer;
  readonly outcome: string;
  /** False when the answer was already known, from before a repair or from another flow. */
  readonly fresh: boolean;
}

export interface Concluded {
  readonly verdict: Verdict;
  readonly remedy: Remedy;
  readonly rig: Rig;
  readonly facts: Facts;
  readonly asked: readonly Asked[];
}

/** Who answers. The situation is what is believed of the bike and what was answered so far. */
export type Answering = (step: Step, situation: Situation) => Answer;

/** No way through a flow asks more than this; a longer one goes round in a circle. */
const MOST_QUESTIONS = 60;
/** How often somebody takes readings again that the flow cannot use, before it becomes "I can't". */
const TRIES = 3;

function usableAnswer(step: Step, situation: Situation, answering: Answering): { answer: Answer; outcome: string } {
  for (let i = 0; i < TRIES; i++) {
    const answer = answering(step, situation);
    const outcome = outcomeOf(step, { ...situation, facts: { ...situation.facts, [step.id]: answer } });
    if (outcome !== undefined) return { answer, outcome };
  }
  return { answer: { cannot: true }, outcome: 'cannot' };
}

/**
 * Answers the machine of a flow until it stands in a verdict. Facts that are known already are used when they are asked
 * for, as in a replay. `onAnswer` may end the conversation early by returning true: the site then wants a word first.
 */
export function askThrough(
  flow: Flow,
  known: { readonly rig: Rig; readonly facts: Facts },
  answering: Answering,
  onAnswer: (situation: Situation, asked: readonly Asked[]) => boolean = () => false,
): Concluded | { readonly stoppedAt: Situation; readonly asked: readonly Asked[] } {
  const asked: Asked[] = [];
  let standing = startOf(flow, known.rig);
  while (asked.length <= MOST_QUESTIONS) {
    const { snapshot, meta } = standing;
    const { rig, facts } = snapshot.context;
    if (meta?.verdict && snapshot.output)
      return { verdict: meta.verdict, remedy: snapshot.output.remedy, rig, facts, asked };
    const step = meta?.step;
    if (!step) throw new Error(`flow ${flow.id} stands in a state that neither asks nor concludes`);
    const before = known.facts[step.id];
    const old = before && outcomeOf(step, { rig, facts: { ...facts, [step.id]: before } });
    const { answer, outcome } =
      before && old !== undefined
        ? { answer: before, outcome: old }
        : usableAnswer(step, { rig, facts: { ...known.facts, ...facts } }, answering);
    asked.push({ step, answer, outcome, fresh: old === undefined });
    standing = standing.after(step, answer);
    const { context } = standing.snapshot;
    if (old === undefined && onAnswer(context, asked)) return { stoppedAt: context, asked };
  }
  throw new Error(`flow ${flow.id} goes round in a circle: ${asked.map(({ step }) => step.id).join(' ')}`);
}
