import { type Decision, decide, observationsOf } from '../../machines/decision.ts';
import type { FlowContext, HandsOver, Late, StagedFlow } from '../../machines/machine.ts';
import { canBeAsked } from '../../machines/sense.ts';
import { expectedBits } from '../inference/gain.ts';
import { meaningsOf } from '../inference/meaning.ts';
import { posterior, ranked } from '../inference/posterior.ts';
import { compile, isUnthought } from '../inference/table.ts';
import type { Rig } from '../rig/rig.ts';
import { type Findings, findingsFrom, learnedRig } from '../steps/outcome.ts';
import type { Answer, Step } from '../steps/step.ts';

/** What stands at the end of a branch: the causes that are left, the likeliest first, or the flow that goes on. */
export type End = { readonly causes: readonly string[] } | { readonly onward: HandsOver };

/** A question, and where each of its answers leads. What hardly anybody sees is left out. */
export interface Question {
  readonly kind: 'question';
  readonly step: Step;
  /** Of all callers, so many come here. */
  readonly share: number;
  /** What is known when it is asked, as its words may need it. */
  readonly findings: Findings;
  readonly answers: readonly { readonly outcome: string; readonly share: number; readonly to: Branch }[];
}
export interface Ended {
  readonly kind: 'end';
  readonly end: End;
  readonly share: number;
  readonly findings: Findings;
}
/** Where the paper ends and the page goes on. */
export interface Cut {
  readonly kind: 'cut';
  readonly share: number;
}
export type Branch = Question | Ended | Cut;

export interface Chart {
  readonly root: Branch;
  readonly questions: number;
  /** Of all callers, the cause of so many is named on it. */
  readonly coveredShare: number;
}

/** How much of what the page would do a chart does. */
export interface Reach {
  /** A question about the past is worth its place only if it tells so many bits. */
  readonly toldBits: number;
  /** A branch ends where so few causes hold so much of what is believed: the likeliest fix is done first. */
  readonly mostNamed: number;
  readonly namedShare: number;
}

/** A cause that has less is not named. */
const LEAST_NAMED = 0.05;
/** An answer that fewer give is not drawn. */
const LEAST_SHARE = 0.004;

/** What a chart must reach, on what room. */
export interface Goal {
  /** Of all callers, the cause of so many is named. */
  readonly coverShare: number;
  /** So many questions fit on the paper. */
  readonly mostQuestions: number;
}

interface Known {
  readonly outcomes: ReadonlyMap<string, string>;
  readonly confirmed: readonly string[];
}

/** A branch that can still be written out. */
interface Open {
  readonly share: number;
  readonly known: Known;
  /** Where it goes once it is written. */
  put(branch: Branch): void;
}

/** The answers that stand for outcomes: a reading has no number here, what it means is known without. */
const answersOf = (flow: StagedFlow, outcomes: Known['outcomes']): Readonly<Record<string, Answer>> =>
  Object.fromEntries(
    [...outcomes].flatMap(([id, outcome]): [string, Answer][] => {
      if (outcome === 'cannot') return [[id, { cannot: true }]];
      return [[id, flow.steps.get(id)?.kind === 'reading' ? { readings: {} } : { option: outcome }]];
    }),
  );

function findingsOf(flow: StagedFlow, bike: Rig, { outcomes }: Known): Findings {
  const facts = answersOf(flow, outcomes);
  const rig = learnedRig(bike, [...flow.steps.values()], facts);
  return findingsFrom(
    { rig, facts },
    (id) => {
      const step = flow.steps.get(id);
      return outcomes.get(id) ?? (step?.kind === 'rig' ? step.known(rig) : undefined);
    },
    () => ({}),
  );
}

/**
 * Unrolls what a flow would ask on a bike, always the likeliest open branch next, until so many callers have come to an
 * end or so many questions are written. How often an answer is given is what the inference expects at that point. What is
 * said of the bike is said at the head; what is told of the past is asked only where it tells much; a doubted answer
 * counts as given twice.
 */
export function unroll(
  flow: StagedFlow,
  late: Late,
  bike: Rig,
  { toldBits, mostNamed, namedShare }: Reach,
  { coverShare, mostQuestions }: Goal,
): Chart {
  const model = compile(late.table);
  const believedIn = (findings: Findings, { confirmed }: Known) =>
    posterior(model, { observations: observationsOf(flow, findings, new Set(confirmed)), repairs: [] });

  /** What is asked or concluded next; what needs no place on paper is answered on the way. */
  function next(before: Known): { known: Known; findings: Findings; decision: Decision } {
    let known = before;
    for (;;) {
      const findings = findingsOf(flow, bike, known);
      const answered = (id: string, outcome: string): Known => ({
        ...known,
        outcomes: new Map(known.outcomes).set(id, outcome),
      });
      const first = flow.inOrder.find((one) => canBeAsked(one, findings));
      if (first) {
        const tells = flow.told.has(first.id) && expectedBits(model, believedIn(findings, known), first.id);
        if (tells && tells >= toldBits) return { known, findings, decision: { kind: 'ask', step: first } };
        known = answered(first.id, 'cannot');
        continue;
      }
      const context: FlowContext = {
        rig: findings.rig,
        facts: findings.facts,
        confirmed: known.confirmed,
        askedAgain: 0,
        late,
        mayHandOver: true,
      };
      const { decision } = decide(flow, context, findings);
      if (decision.kind === 'confirm') known = { ...known, confirmed: [...known.confirmed, decision.step.id] };
      else if (decision.kind === 'ask' && decision.step.id === 'tools-at-hand')
        known = answered('tools-at-hand', 'meter');
      else return { known, findings, decision };
    }
  }

  /** The causes that are left where few enough hold enough, and what they hold. */
  function fewLeft({ findings, known, decision }: ReturnType<typeof next>): { end: End; held: number } | undefined {
    if (decision.kind === 'hand over') return { end: { onward: decision.to }, held: 1 };
    const shares = ranked(model, believedIn(findings, known)).filter(({ cause }) => !isUnthought(cause));
    const named = shares.slice(0, mostNamed).filter(({ shareRatio }) => shareRatio >= LEAST_NAMED);
    const held = named.reduce((sum, { shareRatio }) => sum + shareRatio, 0);
    // Who has answered nothing yet is asked, however likely one cause is.
    if (decision.kind === 'ask' && (held < namedShare || questions === 0)) return undefined;
    return { end: { causes: named.map(({ cause }) => cause) }, held };
  }

  let covered = 0;
  let questions = 0;
  let root: Branch = { kind: 'cut', share: 1 };
  const open: Open[] = [{ share: 1, known: { outcomes: new Map(), confirmed: [] }, put: (branch) => (root = branch) }];
  while (open.length > 0 && covered < coverShare && questions < mostQuestions) {
    open.sort((a, b) => b.share - a.share);
    const { share, known: before, put } = open.shift() as Open;
    const then = next(before);
    const { known, findings, decision } = then;
    const ended = fewLeft(then);
    if (ended) {
      put({ kind: 'end', end: ended.end, share, findings });
      covered += share * ended.held;
      continue;
    }
    if (decision.kind !== 'ask') continue;
    const { step } = decision;
    const answers: { outcome: string; share: number; to: Branch }[] = [];
    put({ kind: 'question', step, share, findings, answers });
    questions++;
    const meanings = meaningsOf(model, believedIn(findings, known), step.id);
    // A packed table rounds: its chances add up to one or a trifle more.
    const total = Math.max(
      1,
      meanings.reduce((sum, { chance }) => sum + chance, 0),
    );
    for (const { outcome, chance } of meanings) {
      const own = (share * chance) / total;
      if (own < LEAST_SHARE || !(outcome in step.outcomes)) continue;
      const answer = { outcome, share: own, to: { kind: 'cut', share: own } as Branch };
      answers.push(answer);
      open.push({
        share: own,
        known: { ...known, outcomes: new Map(known.outcomes).set(step.id, outcome) },
        put: (branch) => (answer.to = branch),
      });
    }
  }
  return { root, questions, coveredShare: covered };
}
