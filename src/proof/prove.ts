import { toText } from '../case/case-text.ts';
import { addBins, type Bins, binsOf } from './calibration.ts';
import { MODES, type Mode, playTrial, type Trial } from './modes.ts';
import type { PlanCounts } from './plan/prove-plan.ts';
import type { Played, Stages } from './play.ts';
import { nameOf, subjectOf } from './subjects.ts';

/** A case that did not go well: enough to play it again, and to see where it went wrong. */
export interface Failure {
  readonly flow: string;
  readonly bike: string;
  readonly faults: string;
  readonly why: string;
  readonly hardship?: string;
  /** What was answered to each end, one line a round. */
  readonly ways: readonly string[];
  /** The case as it was played, which the site opens. */
  readonly case: string;
}

/** What a mode came to. The first verdict counts after a hand-over. */
export interface ModeResult {
  readonly cases: number;
  /** The cause that the verdict names, or the first of its list, is right. */
  readonly first: number;
  /** One of all that it names is right. */
  readonly listed: number;
  readonly proved: number;
  readonly provedRight: number;
  readonly cured: number;
  /** Repairs in vain, and parts, visits and reflashes paid for nothing. */
  readonly vain: number;
  readonly parts: number;
  readonly harmful: number;
  readonly minutes: number;
  readonly questions: number;
  /** By class of what was made hard: cases, and those in which the first verdict was right. */
  readonly classes: Readonly<Record<string, readonly [cases: number, first: number]>>;
  /** Shares of the leading cause at each verdict, and how often it was that. */
  readonly bins: Bins;
  readonly failures: readonly Failure[];
  /** Of a plan: what became of it. */
  readonly plan?: PlanCounts;
}
export type Result = Readonly<Record<string, ModeResult>>;

export interface Proof {
  readonly flow: string;
  readonly complaints: Readonly<Record<string, number>>;
  readonly seed: number;
  readonly faultsPerBike: number;
  readonly turns: number;
  readonly bikes: readonly number[];
  readonly modes?: readonly string[];
}

export const NOTHING: ModeResult = {
  cases: 0,
  first: 0,
  listed: 0,
  proved: 0,
  provedRight: 0,
  cured: 0,
  vain: 0,
  parts: 0,
  harmful: 0,
  minutes: 0,
  questions: 0,
  classes: {},
  bins: {},
  failures: [],
};

function addClasses(a: ModeResult['classes'], b: ModeResult['classes']): ModeResult['classes'] {
  const all = new Set([...Object.keys(a), ...Object.keys(b)]);
  return Object.fromEntries(
    [...all].map((name) => [
      name,
      [(a[name]?.[0] ?? 0) + (b[name]?.[0] ?? 0), (a[name]?.[1] ?? 0) + (b[name]?.[1] ?? 0)] as const,
    ]),
  );
}

export const add = (a: ModeResult, b: ModeResult): ModeResult => ({
  cases: a.cases + b.cases,
  first: a.first + b.first,
  listed: a.listed + b.listed,
  proved: a.proved + b.proved,
  provedRight: a.provedRight + b.provedRight,
  cured: a.cured + b.cured,
  vain: a.vain + b.vain,
  parts: a.parts + b.parts,
  harmful: a.harmful + b.harmful,
  minutes: a.minutes + b.minutes,
  questions: a.questions + b.questions,
  classes: addClasses(a.classes, b.classes),
  bins: addBins(a.bins, b.bins),
  failures: [...a.failures, ...b.failures],
  ...((a.plan || b.plan) && { plan: addPlans(a.plan, b.plan) }),
});

const addPlans = (a: PlanCounts | undefined, b: PlanCounts | undefined): PlanCounts => {
  const names = Object.keys({ ...a, ...b }) as (keyof PlanCounts)[];
  return Object.fromEntries(names.map((name) => [name, (a?.[name] ?? 0) + (b?.[name] ?? 0)])) as unknown as PlanCounts;
};

/** Why a case did not go well, the gravest first. */
function whyNot({ rounds, cured }: Played): readonly string[] {
  const [first] = rounds;
  if (!first) return ['no verdict'];
  const named = first.named.join(', ') || 'nobody';
  const proved = first.certainty === 'proved' && !first.right[0];
  return [
    ...rounds.flatMap(({ harms }) => harms.map((harm) => `harm: ${harm}`)),
    ...(proved ? [`proved ${named}, which is wrong`] : []),
    ...(first.right.some(Boolean)
      ? first.right[0]
        ? []
        : [`listed behind ${first.named[0]}`]
      : [`not named: ${named}`]),
    ...(cured ? [] : ['not cured']),
  ];
}

function tryOne(flow: string, { name }: { readonly name: string }, trial: Trial): ModeResult {
  const played = playTrial(trial);
  const { rounds, cured } = played;
  const [first] = rounds;
  const isFirst = first?.right[0] === true;
  const reasons = whyNot(played);
  const failure: Failure | undefined =
    reasons.length === 0
      ? undefined
      : {
          flow,
          bike: name,
          faults: nameOf(trial.faults),
          why: reasons.join('; '),
          ...(trial.hardship && { hardship: trial.hardship }),
          ways: rounds.map((round) => `${round.flow}: ${round.way} → ${round.named.join(' | ')} (${round.certainty})`),
          case: toText(played.case),
        };
  const proved = first?.certainty === 'proved';
  return {
    cases: 1,
    first: isFirst ? 1 : 0,
    listed: first?.right.some(Boolean) ? 1 : 0,
    proved: proved ? 1 : 0,
    provedRight: proved && isFirst ? 1 : 0,
    cured: cured ? 1 : 0,
    vain: rounds.filter(({ vain }) => vain).length,
    parts: rounds.filter(({ part }) => part).length,
    harmful: rounds.some(({ harms }) => harms.length > 0) ? 1 : 0,
    minutes: played.minutes,
    questions: played.asked.length,
    classes: Object.fromEntries((trial.classes ?? []).map((one) => [one, [1, isFirst ? 1 : 0] as const])),
    bins: binsOf(rounds.flatMap(({ lead }) => lead ?? [])),
    failures: failure ? [failure] : [],
  };
}

/** Plays every mode on the bikes with these numbers. The same seed and numbers give the same result. */
export function prove(proof: Proof, stages: Stages): Result {
  const { flow, turns, bikes, modes } = proof;
  const wanted = MODES.filter(({ id }) => modes?.includes(id) ?? true);
  const results = new Map<string, ModeResult>(wanted.map(({ id }) => [id, NOTHING]));
  for (const index of bikes) {
    const subject = subjectOf(proof, index);
    if (!subject) continue;
    for (const mode of wanted)
      for (const trial of mode.trials({ flow, stages, turns }, subject))
        results.set(mode.id, add(results.get(mode.id) ?? NOTHING, tryOne(flow, subject, trial)));
  }
  return Object.fromEntries(results);
}

/** Several results as one, in the order of the modes. */
export const merged = (results: readonly Result[]): Result =>
  Object.fromEntries(
    [...new Set([...MODES.map(({ id }: Mode) => id), ...results.flatMap((one) => Object.keys(one))])].flatMap((id) => {
      const own = results.flatMap((one) => one[id] ?? []);
      return own.length === 0 ? [] : [[id, own.reduce(add)]];
    }),
  );
