import type { Rig } from '../rig/rig.ts';
import { learnedRig, outcomeOf } from '../steps/outcome.ts';
import type { Answer, Facts, Situation, Step } from '../steps/step.ts';
import { type Fault, severityAt, weightOf } from '../world/faults/index.ts';
import { healthyWorld } from '../world/healthy.ts';
import type { World } from '../world/state.ts';
import { COMPLAINTS, type ComplaintId, type Ridden, ridden } from '../world/symptoms/index.ts';
import type { Chances } from './signs.ts';

/** What to make the signs of: a complaint, the steps that its flow asks, and the bikes to look at. */
export interface Survey {
  readonly complaint: ComplaintId;
  readonly steps: readonly Step[];
  /** Steps whose outcome splits bikes into kinds of build, which are listed apart. */
  readonly kindSteps: readonly string[];
  readonly faults: readonly Fault[];
  readonly rigs: readonly Rig[];
  /** What is told of the past: it differs from owner to owner, and costs nothing to ask again. */
  readonly historySteps: readonly string[];
  /** Whether a flow would ask a step of a bike of which this is known. */
  makesSense(step: Step, outcome: (stepId: string) => string | undefined): boolean;
  /** Who stands for a fault: suspects of the same name that show the same are one row. */
  nameOf(fault: Fault): string | undefined;
  /** What somebody says at a bike; `time` tells the ways apart in which chance may fall. */
  observe(step: Step, bike: Ridden, situation: Situation, time: number): Answer;
}

/** What a suspect shows on the builds on which it shows the same. */
export interface MadeSigns {
  readonly suspect: string;
  readonly weight: number;
  readonly shows: Readonly<Record<string, Chances>>;
}

/** How many people look at each bike: what they hear, move or remember differs by chance. Readings do not. */
const LOOKS = 12;
/** Mild, middling and bad. */
const SEVERITY_SHARES = [0.05, 0.5, 0.95];

type Counts = Map<string, Map<string, number>>;
const count = (counts: Counts, step: string, outcome: string): void => {
  const own = counts.get(step) ?? new Map<string, number>();
  own.set(outcome, (own.get(outcome) ?? 0) + 1);
  counts.set(step, own);
};

/** Facts that readings are judged by: what is fitted, the meter. */
function baseFacts(survey: Survey, bike: Ridden, rig: Rig): Situation {
  let facts: Facts = {};
  for (const step of survey.steps) {
    if (step.kind !== 'rig' && step.id !== 'tools-at-hand' && step.id !== 'meter-digit') continue;
    facts = { ...facts, [step.id]: survey.observe(step, bike, { rig, facts }, 0) };
  }
  return { rig: learnedRig(rig, survey.steps, facts), facts };
}

/** Looks at every step of one bike, and counts what it showed. */
function lookAt(survey: Survey, bike: Ridden, rig: Rig): Counts {
  const counts: Counts = new Map();
  const base = baseFacts(survey, bike, rig);
  const outcomeIn = (step: Step, answer: Answer) =>
    outcomeOf(step, { ...base, facts: { ...base.facts, [step.id]: answer } });
  const known = (id: string) => {
    const [step, answer] = [survey.steps.find((one) => one.id === id), base.facts[id]];
    return step && answer && outcomeIn(step, answer);
  };
  for (const step of survey.steps) {
    if (!survey.makesSense(step, known)) continue;
    const times = step.kind === 'choice' ? LOOKS : 1;
    for (let time = 0; time < times; time++) {
      const outcome = outcomeIn(step, base.facts[step.id] ?? survey.observe(step, bike, base, time));
      if (outcome !== undefined && outcome !== 'cannot' && outcome !== 'unclear') count(counts, step.id, outcome);
    }
  }
  return counts;
}

const toChances = (counts: Counts): Record<string, Chances> =>
  Object.fromEntries(
    [...counts].map(([step, own]) => {
      const total = [...own.values()].reduce((sum, n) => sum + n, 0);
      return [step, Object.fromEntries([...own].toSorted().map(([outcome, n]) => [outcome, n / total]))];
    }),
  );

/** Bikes that show the same, with the weight that they stand for. */
interface Row {
  readonly suspect: string;
  readonly kind: string;
  readonly counts: Counts;
  readonly weight: number;
}

const kindOf = (survey: Survey, counts: Counts): string =>
  survey.kindSteps.map((step) => [...(counts.get(step)?.keys() ?? [])].join('/')).join(' ');

const together = (a: Row, b: Row): Row => {
  const counts: Counts = new Map();
  for (const row of [a, b])
    for (const [step, own] of row.counts)
      for (const [outcome, n] of own) for (let i = 0; i < n; i++) count(counts, step, outcome);
  return { ...a, counts, weight: a.weight + b.weight };
};

/** Who has it mostly complains of something else, and a case may still come here from another flow. An estimate. */
const SELDOM_WEIGHT = 0.5;

/** What a fault shows on one bike, mild, middling and bad, wherever it causes the complaint. */
function shownOn(survey: Survey, fault: Fault, rig: Rig, healthy: World): readonly Counts[] {
  if (survey.nameOf(fault) === undefined || !fault.fits(healthy)) return [];
  return (fault.severity ? SEVERITY_SHARES : [0]).flatMap((share) => {
    const bike = ridden(fault.apply(healthy, severityAt(fault, share)));
    return COMPLAINTS[survey.complaint](bike) === 'yes' ? [lookAt(survey, bike, rig)] : [];
  });
}

/** Its weight is spread evenly over the bikes on which it causes the complaint. */
function rowsOf(survey: Survey, fault: Fault, seen: readonly Counts[]): readonly Row[] {
  const suspect = survey.nameOf(fault);
  const weight = weightOf(fault, survey.complaint) ?? SELDOM_WEIGHT;
  if (!suspect) return [];
  return seen.map((counts) => ({ suspect, kind: kindOf(survey, counts), counts, weight: weight / seen.length }));
}

/** By fault, what it shows on all bikes. One bike after the other: what is remembered of one is let go with it. */
function shownOnAll(survey: Survey): ReadonlyMap<Fault, readonly Counts[]> {
  const seen = new Map<Fault, Counts[]>(survey.faults.map((fault) => [fault, []]));
  for (const rig of survey.rigs) {
    const healthy = healthyWorld(rig);
    if (COMPLAINTS[survey.complaint](ridden(healthy)) !== 'no') continue;
    for (const [fault, counts] of seen) counts.push(...shownOn(survey, fault, rig, healthy));
  }
  return seen;
}

/** Shares that differ by less than this are the same: chance, and not the kind of build. */
const SAME_SHARE = 0.35;
/** A step that one of them does not have at all makes no difference. */
const differs = (a: Chances | undefined, b: Chances | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  [...new Set([...Object.keys(a), ...Object.keys(b)])].some((o) => Math.abs((a[o] ?? 0) - (b[o] ?? 0)) > SAME_SHARE);

/** Rows of one suspect that show the same, on whatever kind of build, as one row. */
function merged(rows: readonly Row[], apart: readonly string[]): readonly Row[] {
  const kept: Row[] = [];
  for (const row of rows) {
    const shows = toChances(row.counts);
    const at = kept.findIndex((other) => {
      const others = toChances(other.counts);
      return (
        other.suspect === row.suspect &&
        Object.keys(shows).every((step) => apart.includes(step) || !differs(shows[step], others[step]))
      );
    });
    if (at < 0) kept.push(row);
    else kept[at] = together(kept[at] as Row, row);
  }
  return kept;
}

const byKind = (rows: readonly Row[]): readonly Row[] =>
  [...Map.groupBy(rows, ({ suspect, kind }) => `${suspect} ${kind}`).values()].map((own) => own.reduce(together));

/** What each suspect shows at each step, and how often, by kind of build: made from the circuit, not by hand. */
export function makeSigns(survey: Survey): readonly MadeSigns[] {
  // First by fault, so that a fault which shows something of its own keeps a row of its own.
  const rows = [...shownOnAll(survey)].flatMap(([fault, seen]) => byKind(rowsOf(survey, fault, seen)));
  return merged(rows, [...survey.kindSteps, ...survey.historySteps]).map(({ suspect, weight, counts }) => ({
    suspect,
    weight,
    shows: toChances(counts),
  }));
}

/** What a bike without a fault shows, by step: the outcome that it gives most. */
export function soundOutcomes(survey: Survey): Readonly<Record<string, string>> {
  const all = survey.rigs
    .map((rig): Row => ({ suspect: '', kind: '', weight: 0, counts: lookAt(survey, ridden(healthyWorld(rig)), rig) }))
    .reduce(together);
  return Object.fromEntries(
    Object.entries(toChances(all.counts)).flatMap(([step, chances]) => {
      const [most] = Object.entries(chances).toSorted((a, b) => b[1] - a[1]);
      return most && !survey.kindSteps.includes(step) ? [[step, most[0]]] : [];
    }),
  );
}
