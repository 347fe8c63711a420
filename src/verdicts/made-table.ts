import type { Situation } from '../steps/step.ts';
import { BUILD, type Suspect } from './suspects.ts';

/** How often a step gives each of its outcomes. */
export type Chances = Readonly<Record<string, number>>;

/** One suspect of a flow as the circuit shows it, on one kind of build: made, not written by hand. */
export interface MadeSuspect {
  readonly verdict: string;
  readonly weight: number;
  readonly shows: Readonly<Record<string, Chances>>;
}

export interface MadeTable {
  readonly suspects: readonly MadeSuspect[];
  /** What a bike without a fault shows, by step. */
  readonly sound: Readonly<Record<string, string>>;
}

/** An outcome that is always given is written as its name, a step that says nothing as null. */
type PackedChances = string | Chances | null;
/** The table as it is stored: what most suspects show once, and of each suspect only where it differs. */
export interface PackedTable {
  readonly common: Readonly<Record<string, PackedChances>>;
  readonly suspects: readonly (readonly [
    verdict: string,
    weight: number,
    differs: Readonly<Record<string, PackedChances>>,
  ])[];
  readonly sound: Readonly<Record<string, string>>;
}

const unpackChances = (packed: PackedChances): readonly Chances[] =>
  packed === null ? [] : [typeof packed === 'string' ? { [packed]: 1 } : packed];

export const unpackTable = ({ common, suspects, sound }: PackedTable): MadeTable => ({
  suspects: suspects.map(([verdict, weight, differs]) => ({
    verdict,
    weight,
    shows: Object.fromEntries(
      Object.entries({ ...common, ...differs }).flatMap(([step, packed]) =>
        unpackChances(packed).map((chances) => [step, chances] as const),
      ),
    ),
  })),
  sound,
});

const packChances = (chances: Chances | undefined): PackedChances => {
  if (chances === undefined) return null;
  const [only, ...others] = Object.keys(chances);
  return only !== undefined && others.length === 0 ? only : chances;
};

export function packTable({ suspects, sound }: MadeTable): PackedTable {
  const steps = [...new Set(suspects.flatMap(({ shows }) => Object.keys(shows)))];
  const packed = suspects.map(({ shows }) => new Map(steps.map((step) => [step, packChances(shows[step])] as const)));
  const usual = (step: string): PackedChances => {
    const counted = Map.groupBy(packed, (own) => JSON.stringify(own.get(step)));
    const [most] = [...counted].toSorted((a, b) => b[1].length - a[1].length);
    return most ? (JSON.parse(most[0]) as PackedChances) : null;
  };
  const common = Object.fromEntries(steps.map((step) => [step, usual(step)]));
  const differs = (own: ReadonlyMap<string, PackedChances>) =>
    Object.fromEntries([...own].filter(([step, chances]) => JSON.stringify(chances) !== JSON.stringify(common[step])));
  return {
    common,
    suspects: suspects.map(({ verdict, weight }, i) => [verdict, weight, differs(packed[i] ?? new Map())] as const),
    sound,
  };
}

/** Steps that move the odds and rule nothing out. */
const HISTORY = ['rear-history', 'last-change', 'amp-history'];
/** No history makes a fault more than so many times likelier, or less likely, than it is without. */
const MOST_ODDS = 20;
/** Steps that say what is fitted. A table made from some hundred bikes has not seen every build with every fault. */
const FITTED = ['unit-kind', 'rear-amp-turn-on', 'front-amp-turn-on'];
/** The share of what a suspect was not seen to show on its builds, and was on others. An estimate: rare, and likelier than a slip. */
const UNSEEN_SHARE = 0.05;

/** By how much an outcome of the past moves a suspect: how often it tells it, over how often all suspects do. */
function oddsBy(table: MadeTable, { shows }: MadeSuspect, step: string): Readonly<Record<string, number>> {
  const total = table.suspects.reduce((sum, { weight }) => sum + weight, 0);
  const outcomes = new Set(table.suspects.flatMap((one) => Object.keys(one.shows[step] ?? {})));
  return Object.fromEntries(
    [...outcomes].map((outcome) => {
      const all = table.suspects.reduce((sum, one) => sum + one.weight * (one.shows[step]?.[outcome] ?? 0), 0) / total;
      const factor = (shows[step]?.[outcome] ?? 0) / all;
      return [outcome, Number(Math.min(MOST_ODDS, Math.max(1 / MOST_ODDS, factor)).toPrecision(2))];
    }),
  );
}

/** The outcomes of a step that the same suspect was seen to give on whatever build. */
const seenAnywhere = (table: MadeTable, { verdict }: MadeSuspect, step: string): readonly string[] => [
  ...new Set(table.suspects.flatMap((one) => (one.verdict === verdict ? Object.keys(one.shows[step] ?? {}) : []))),
];

/** A made suspect as evidence is weighed: history moves its odds, everything else it shows or not. */
export interface MadeEvidence extends MadeSuspect {
  readonly odds: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

/**
 * How often a suspect's builds are of a kind, over how often all builds are on which its verdict was seen. Its weight is how
 * often it is the cause on a bike that can have it, whatever else was built: only the rows of one verdict share it.
 */
function ofItsBuilds(table: MadeTable, { verdict, shows }: MadeSuspect, step: string): Chances {
  const rows = table.suspects.filter((one) => one.verdict === verdict);
  const total = rows.reduce((sum, { weight }) => sum + weight, 0);
  const among = (outcome: string) =>
    rows.reduce((sum, row) => sum + row.weight * (row.shows[step]?.[outcome] ?? 0), 0) / total;
  return Object.fromEntries(Object.entries(shows[step] ?? {}).map(([name, share]) => [name, share / among(name)]));
}

const toEvidence = (table: MadeTable): readonly MadeEvidence[] =>
  table.suspects.map((made) => {
    const past = HISTORY.filter((step) => made.shows[step]);
    const shows = Object.entries(made.shows).filter(([step]) => !past.includes(step));
    const unseen = (step: string) =>
      Object.fromEntries(seenAnywhere(table, made, step).map((outcome) => [outcome, UNSEEN_SHARE]));
    return {
      verdict: made.verdict,
      weight: made.weight,
      odds: Object.fromEntries(past.map((step) => [step, oddsBy(table, made, step)])),
      shows: Object.fromEntries(
        shows.map(([step, chances]) => [
          step,
          { ...unseen(step), ...(BUILD.has(step) ? ofItsBuilds(table, made, step) : chances) },
        ]),
      ),
    };
  });

/**
 * What is written by hand of a suspect: what it is called, the check that separates it, and what speaks against it
 * together, where a table from some hundred bikes has not seen that the two never meet.
 */
export type SuspectText = Pick<Suspect, 'title' | 'split' | 'notWith'> & {
  /** Faults, with or without their variant, that it stands for besides those that its verdict mends. */
  readonly means?: readonly string[];
};
export type SuspectTexts = Readonly<Record<string, SuspectText>>;

const likeliestFirst = (chances: Chances): readonly string[] =>
  Object.keys(chances).toSorted((a, b) => (chances[b] ?? 0) - (chances[a] ?? 0));

/** Made suspects in the form that the ranking takes: what one never shows on its build rules it out. */
function toSuspects(table: MadeTable, evidence: readonly MadeEvidence[], texts: SuspectTexts): readonly Suspect[] {
  return evidence.map(({ verdict, weight, odds, shows }, i) => {
    const [made, text] = [table.suspects[i], texts[verdict]];
    if (!made || !text) throw new RangeError(`texts must have one for ${verdict}`);
    const { title, split, notWith } = text;
    const said = { title, split, ...(notWith && { notWith }) };
    const signs = Object.entries(made.shows).flatMap(([step, chances]) => {
      if (odds[step]) return [];
      const seen = FITTED.includes(step) ? seenAnywhere(table, made, step) : [];
      return [[step, [...new Set([...likeliestFirst(chances), ...seen])]] as const];
    });
    return { verdict, ...said, weight, odds, shows, signs: Object.fromEntries(signs) };
  });
}

/** Everything that is known beforehand of the suspects of a flow. */
export interface SuspectTable {
  /** To rank them by what was answered. */
  readonly suspects: readonly Suspect[];
  /** To weigh whether one of the answers is likelier wrong. */
  readonly evidence: readonly MadeEvidence[];
  /** What a bike without a fault shows, by step. */
  readonly sound: Readonly<Record<string, string>>;
}

/** The table that holds for a case: of two amplifiers on a bike only one is what the case is about. */
export type TableFor = (situation: Situation) => SuspectTable;

export function suspectTable(made: MadeTable, texts: SuspectTexts): SuspectTable {
  const evidence = toEvidence(made);
  return { suspects: toSuspects(made, evidence, texts), evidence, sound: made.sound };
}
