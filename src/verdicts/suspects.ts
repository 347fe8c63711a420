import { type Findings, outcomeNamed } from '../steps/outcome.ts';

/**
 * One suspect of a flow on one kind of build: how often it is the cause among callers, what each step would show, and what
 * history makes likelier. Steps that are not named say nothing about it. Weights are estimates of the trade, for ranking
 * only.
 */
export interface Suspect {
  readonly verdict: string;
  readonly title: string;
  readonly weight: number;
  /** Steps and the outcomes that this suspect can give, likeliest first. Any other outcome speaks against it. */
  readonly signs: Readonly<Record<string, readonly string[]>>;
  /** How often it shows each of them. What is built in counts among its own rows only. */
  readonly shows?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Outcomes that, together, speak against it. */
  readonly notWith?: readonly Readonly<Record<string, readonly string[]>>[];
  /** Steps whose outcome multiplies the odds without ruling anything out. */
  readonly odds?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** A harmless check that separates it from the rest. */
  readonly split: string;
}

export interface Ranked {
  readonly suspect: Suspect;
  /** Its share of the odds among those still possible; 0 when an answer speaks against it. */
  readonly shareRatio: number;
  /** The steps whose answers speak against it. */
  readonly against: readonly string[];
}

/** "I can't" and "unclear" are unknown, never a sign for or against anybody. */
const SAYS_NOTHING = new Set(['cannot', 'unclear']);

function oddsOf(suspect: Suspect, findings: Findings): number {
  return [...Object.entries(suspect.odds ?? {}), ...Object.entries(suspect.shows ?? {})].reduce(
    (weight, [step, factors]) => {
      const outcome = outcomeNamed(findings, step);
      return weight * ((outcome === undefined ? undefined : factors[outcome]) ?? 1);
    },
    suspect.weight,
  );
}

function speaksAgainst(suspect: Suspect, findings: Findings): readonly string[] {
  const alone = Object.entries(suspect.signs).flatMap(([step, possible]) => {
    const outcome = outcomeNamed(findings, step);
    return outcome === undefined || SAYS_NOTHING.has(outcome) || possible.includes(outcome) ? [] : [step];
  });
  const together = (suspect.notWith ?? []).filter((outcomes) =>
    Object.entries(outcomes).every(([step, ruling]) => ruling.includes(outcomeNamed(findings, step) ?? '')),
  );
  return [...new Set([...alone, ...together.flatMap((outcomes) => Object.keys(outcomes))])];
}

/** All suspects, likeliest first, then those that answers speak against, fewest contradictions first. */
export function rank(suspects: readonly Suspect[], findings: Findings): readonly Ranked[] {
  const judged = suspects.map((suspect) => ({
    suspect,
    odds: oddsOf(suspect, findings),
    against: speaksAgainst(suspect, findings),
  }));
  const total = judged.reduce((sum, { odds, against }) => sum + (against.length === 0 ? odds : 0), 0);
  return judged
    .toSorted((a, b) => a.against.length - b.against.length || b.odds - a.odds)
    .map(({ suspect, odds, against }) => ({ suspect, against, shareRatio: against.length === 0 ? odds / total : 0 }));
}

export const stillPossible = (ranked: readonly Ranked[]): readonly Ranked[] =>
  ranked.filter(({ against }) => against.length === 0);

/** What is built in, and not what is wrong: a row of another build says nothing about this bike. */
export const BUILD: ReadonlySet<string> = new Set(['unit-kind', 'rear-drive', 'rear-amp-turn-on', 'front-amp-turn-on']);

/** One row per verdict, with the odds of all its rows: the likeliest of this build stands for them. */
export const oneEach = (ranked: readonly Ranked[]): readonly Ranked[] =>
  [...Map.groupBy(ranked, ({ suspect }) => suspect.verdict).values()]
    .map((rows) => ({
      ...(rows.find(({ against }) => !against.some((step) => BUILD.has(step))) ?? (rows[0] as Ranked)),
      shareRatio: rows.reduce((sum, one) => sum + one.shareRatio, 0),
    }))
    .toSorted((a, b) => a.against.length - b.against.length || b.shareRatio - a.shareRatio);

/** A share in the words people use for odds. */
export function shareInWords(shareRatio: number): string {
  const tenths = Math.round(shareRatio * 10);
  if (shareRatio >= 0.995) return 'the only one left';
  return tenths < 1 ? 'less than 1 in 10' : tenths > 9 ? 'more than 9 in 10' : `about ${tenths} in 10`;
}
