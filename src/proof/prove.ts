import { toText } from '../case/case-text.ts';
import type { Case } from '../case/events.ts';
import type { ComplaintId } from '../world/symptoms/index.ts';
import { type ProvedFlow, provedFlow } from './flows.ts';
import { MODES, type Mode, playTrial, type Trial } from './modes.ts';
import type { Played, Round } from './play.ts';
import { nameOf, subjectOf } from './subjects.ts';

/** A case that did not go well: enough to play it again, and to see where it went wrong. */
export interface Failure {
  readonly flow: string;
  readonly bike: string;
  readonly faults: string;
  readonly why: string;
  readonly hardship?: string;
  /** What was answered to each verdict, one line a round. */
  readonly ways: readonly string[];
  /** The first round as a saved case, which the site opens. */
  readonly case: string;
}

export interface ModeResult {
  readonly cases: number;
  /** Cases that went as the mode asks. */
  readonly identified: number;
  readonly cured: number;
  readonly harmful: number;
  readonly failures: readonly Failure[];
}
/** By mode. */
export type Result = Readonly<Record<string, ModeResult>>;

export interface Proof {
  readonly flow: ComplaintId;
  readonly seed: number;
  readonly faultsPerBike: number;
  /** The numbers of the bikes. */
  readonly bikes: readonly number[];
  readonly modes?: readonly string[];
}

const wayOf = ({ flow, verdict, met, asked }: Round): string =>
  `${flow}: ${asked.map(({ step, outcome, fresh }) => `${fresh ? '' : '('}${step.id}=${outcome}${fresh ? '' : ')'}`).join(' ')} → ${verdict} (${met})`;

function caseOf(trial: Trial, round: Round | undefined): Case {
  const answers = (round?.asked ?? []).map(({ step, answer }) => ({ type: 'answer' as const, step: step.id, answer }));
  return { flow: round?.flow ?? '', events: [{ type: 'rig', rig: trial.believed }, ...answers] };
}

const failureOf = (trial: Trial, played: Played, flow: string, why: string): Failure => ({
  flow,
  bike: trial.subject.name,
  faults: nameOf(trial.faults),
  why,
  ...(trial.hardship && { hardship: trial.hardship }),
  ways: played.rounds.map(wayOf),
  case: toText(caseOf(trial, played.rounds[0])),
});

const NOTHING: ModeResult = { cases: 0, identified: 0, cured: 0, harmful: 0, failures: [] };

const add = (a: ModeResult, b: ModeResult): ModeResult => ({
  cases: a.cases + b.cases,
  identified: a.identified + b.identified,
  cured: a.cured + b.cured,
  harmful: a.harmful + b.harmful,
  failures: [...a.failures, ...b.failures],
});

function tryOne(proved: ProvedFlow, mode: Mode, trial: Trial): ModeResult {
  const played = playTrial(proved, trial);
  const why = mode.judge(played, trial);
  const harms = played.rounds.flatMap(({ verdict, harms: own }) =>
    own.map((harm) => `${verdict} would do harm: ${harm}`),
  );
  return {
    cases: 1,
    identified: why === null ? 1 : 0,
    cured: played.cured ? 1 : 0,
    harmful: harms.length > 0 ? 1 : 0,
    failures: [...(why === null ? [] : [why]), ...harms].map((reason) => failureOf(trial, played, proved.id, reason)),
  };
}

/** Plays every mode on the bikes with these numbers. The same seed and numbers give the same result. */
export function prove({ flow, seed, faultsPerBike, bikes, modes }: Proof): Result {
  const proved = provedFlow(flow);
  const wanted = MODES.filter(({ id }) => modes?.includes(id) ?? true);
  const results = new Map<string, ModeResult>(wanted.map(({ id }) => [id, NOTHING]));
  for (const index of bikes) {
    const subject = subjectOf({ complaint: flow, seed, faultsPerBike }, index);
    if (!subject) continue;
    for (const mode of wanted)
      for (const trial of mode.trials(proved, subject))
        results.set(mode.id, add(results.get(mode.id) ?? NOTHING, tryOne(proved, mode, trial)));
  }
  return Object.fromEntries(results);
}

/** Several results as one, in their order. */
export const merged = (results: readonly Result[]): Result =>
  Object.fromEntries(MODES.map(({ id }) => [id, results.reduce((so, one) => add(so, one[id] ?? NOTHING), NOTHING)]));

/** What a result falls short of, one sentence a target; empty when it meets them all. */
export function shortfalls(result: Result): readonly string[] {
  return MODES.flatMap(({ id, target }) => {
    const { cases, identified, harmful } = result[id] ?? NOTHING;
    if (cases === 0) return [];
    return [
      ...(identified < target * cases
        ? [`${id}: ${identified} of ${cases} went well, which is less than ${100 * target} %`]
        : []),
      ...(harmful > 0 ? [`${id}: ${harmful} fixes would do harm`] : []),
    ];
  });
}
