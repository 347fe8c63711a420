import type { Flow } from '../../machines/rows.ts';
import type { Remedy, Verdict } from '../verdicts/verdict.ts';
import { type Fault, keyOf } from '../world/faults/index.ts';
import type { ProvedFlow } from './flows.ts';
import { LISTED } from './listed.ts';

/** What a verdict says is wrong: the faults that its fix mends, and lists of faults that a check of their own separates. */
export interface StandsFor {
  readonly own: readonly string[];
  readonly listed: readonly (readonly string[])[];
  /** Entries of its list in words that the proof does not know. */
  readonly unknown: readonly string[];
}

const faultsOf = (flow: Flow, verdictId: string): readonly string[] =>
  Object.values(flow.states).flatMap((state) =>
    'verdict' in state && state.verdict.id === verdictId ? state.verdict.faults : [],
  );

/** Whether a list of faults, each with or without its variant, has this one. */
export const hasFault = (ids: readonly string[], fault: Fault): boolean =>
  ids.includes(fault.id) || ids.includes(keyOf(fault));

/** The faults that an entry of a list means: a suspect of the flow by its title, or one of the known wordings. */
export function listedFaults({ flow, texts }: Pick<ProvedFlow, 'flow' | 'texts'>, what: string) {
  const suspect = Object.keys(texts).find((verdict) => texts[verdict]?.title === what);
  return suspect ? [...faultsOf(flow, suspect), ...(texts[suspect]?.means ?? [])] : LISTED[what];
}

export function standsFor(proved: ProvedFlow, verdict: Verdict, remedy: Remedy): StandsFor {
  const entries = (remedy.mayAlsoBe ?? []).map(({ what }) => ({ what, faults: listedFaults(proved, what) }));
  return {
    own: verdict.faults,
    listed: entries.map(({ faults }) => faults ?? []),
    unknown: entries.flatMap(({ what, faults }) => (faults ? [] : [what])),
  };
}

const MOST_IN_A_CLASS = 3;
const MOST_IN_A_LIST = 4;

/** Why a verdict names too much to be of use, or null. A short list has its own limit; any other is one class. */
export function tooWide({ own, listed }: Pick<StandsFor, 'own' | 'listed'>, remedy: Remedy): string | null {
  if (remedy.certainty === 'short list')
    return listed.length > MOST_IN_A_LIST ? `in a short list of ${listed.length}` : null;
  // An entry of the list that only takes its own faults apart adds none.
  const others = listed.filter((faults) => faults.some((fault) => !own.includes(fault)));
  const named = own.length + others.length;
  return named > MOST_IN_A_CLASS ? `in a class of ${named}` : null;
}
