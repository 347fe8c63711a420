import { causeTitle } from '../../machines/decision.ts';
import { elsewhere } from '../../machines/elsewhere.ts';
import type { Late, StagedFlow } from '../../machines/machine.ts';
import { formatLimit, formatRange } from '../compute/quantity.ts';
import type { CautionId } from '../steps/cautions.ts';
import { cautionsOfCondition, cautionsOfStep } from '../steps/cautions-of.ts';
import { inWords } from '../steps/step.ts';
import type { Branch, Chart, Ended, Question } from './unroll.ts';

/** Where an answer leads: to a numbered box, to causes with a name, or to another chart. Where the page goes on is not said. */
export type Leads =
  | { readonly kind: 'box'; readonly number: number }
  | { readonly kind: 'causes'; readonly titles: readonly string[] }
  | { readonly kind: 'flow'; readonly flow: string; readonly title: string };

/** A question on the paper. */
export interface Box {
  readonly number: number;
  readonly ask: string;
  /** What a healthy reading is on this bike, for a measurement that has one by itself. */
  readonly healthy: string | undefined;
  readonly answers: readonly { readonly said: string; readonly leads: Leads }[];
}
export interface Sheet {
  readonly boxes: readonly Box[];
  /** What to be careful of on the way. */
  readonly cautions: readonly CautionId[];
}

/** The healthy stretch of each reading that has one by itself. */
function healthyOf({ step, findings }: Question): string | undefined {
  if (step.kind !== 'reading') return undefined;
  const stretches = Object.entries(step.readings).flatMap(([name, { label, unit, possible }]) => {
    const good = step.bands(name, {}, findings)?.find(({ mood }) => mood === 'good');
    if (!good || !Number.isFinite(good.low + good.high)) return [];
    // A band that goes to the end of what a meter can show there has no upper limit.
    if (good.high >= possible[1]) return [`${label} ${formatLimit(good.low, unit)} or more`];
    return [`${label} ${formatRange(good.low, good.high, unit)}`];
  });
  return stretches.length > 0 ? stretches.join(', ') : undefined;
}

/** Without the answers behind which the paper says nothing, and the questions of which none is left. */
function pruned(branch: Branch): Branch {
  if (branch.kind !== 'question') return branch;
  const answers = branch.answers
    .map((answer) => ({ ...answer, to: pruned(answer.to) }))
    .filter(({ to }) => to.kind !== 'cut');
  return answers.length > 0 ? { ...branch, answers } : { kind: 'cut', share: branch.share };
}

/** Answers that lead to the same stand in one row. */
const joined = (answers: Box['answers']): Box['answers'] =>
  [...Map.groupBy(answers, ({ leads }) => JSON.stringify(leads)).values()].flatMap(([first, ...others]) =>
    first ? [{ ...first, said: [first, ...others].map(({ said }) => said).join('; or ') }] : [],
  );

/** What alike branches have in common: they ask the same and lead to the same. */
function signatures(): (branch: Branch) => string {
  const known = new Map<Branch, string>();
  const sign = (branch: Branch): string => {
    const before = known.get(branch);
    if (before !== undefined) return before;
    const made =
      branch.kind === 'question'
        ? `${branch.step.id}(${branch.answers.map(({ outcome, to }) => `${outcome}:${sign(to)}`).join(' ')})`
        : JSON.stringify(branch.kind === 'end' ? branch.end : branch.kind);
    known.set(branch, made);
    return made;
  };
  return sign;
}

/** Puts a tree on paper: a box for each question, alike ones once, in the order in which they are come to. */
export function numbered(chart: Chart, flow: StagedFlow, late: Late): Sheet {
  const root = pruned(chart.root);
  const sign = signatures();
  const numbers = new Map<string, number>();
  const waiting: Question[] = [];
  const numberOf = (question: Question): number => {
    const name = sign(question);
    const known = numbers.get(name);
    if (known !== undefined) return known;
    numbers.set(name, numbers.size + 1);
    waiting.push(question);
    return numbers.size;
  };
  const leadsTo = (to: Question | Ended): Leads => {
    if (to.kind === 'question') return { kind: 'box', number: numberOf(to) };
    if ('onward' in to.end) return { kind: 'flow', flow: to.end.onward.flow, title: to.end.onward.title };
    const [first] = to.end.causes;
    const other = flow.handsOver.find((one) => elsewhere(one.flow) === first);
    if (other && to.end.causes.length === 1) return { kind: 'flow', flow: other.flow, title: other.title };
    return { kind: 'causes', titles: to.end.causes.map((id) => causeTitle(flow, id, to.findings, late.causes)) };
  };
  if (root.kind === 'question') numberOf(root);
  const boxes: Box[] = [];
  const cautions = new Set<CautionId>();
  for (let question = waiting.shift(); question; question = waiting.shift()) {
    const { step, findings, answers } = question;
    for (const id of [...(step.conditions ?? []).flatMap(cautionsOfCondition), ...cautionsOfStep(step, findings)])
      cautions.add(id);
    boxes.push({
      number: numberOf(question),
      ask: inWords(step.ask, findings),
      healthy: healthyOf(question),
      answers: joined(
        answers.flatMap(({ outcome, to }) =>
          to.kind === 'cut' ? [] : [{ said: step.outcomes[outcome] ?? outcome, leads: leadsTo(to) }],
        ),
      ),
    });
  }
  return {
    boxes,
    cautions: ['riding', ...[...cautions].filter((id) => id !== 'riding' && id !== 'local-rules'), 'local-rules'],
  };
}
