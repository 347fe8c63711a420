/** How often a step gives each of its outcomes, from 0 to 1. An outcome that is not named is never given. */
export type Chances = Readonly<Record<string, number>>;

/** What one suspect shows: how likely it is before anything is known, and what each step would give. */
export interface Signs {
  readonly weight: number;
  /** Steps whose outcome multiplies the odds and rules nothing out: history. */
  readonly odds?: Readonly<Record<string, Chances>>;
  /** By step. A step that is not named says nothing about this suspect. */
  readonly shows: Readonly<Record<string, Chances>>;
}

/** The outcomes known so far, by step. */
export type Known = ReadonlyMap<string, string>;

/** "I can't" and "unclear" are unknown, never a sign for or against anybody. */
const SAYS_NOTHING = new Set(['cannot', 'unclear']);
export const telling = (outcomes: Known): Known =>
  new Map([...outcomes].filter(([, outcome]) => !SAYS_NOTHING.has(outcome)));

/** The weight of a suspect once its history is known. */
export const oddsOf = ({ weight, odds }: Signs, outcomes: Known): number =>
  Object.entries(odds ?? {}).reduce((so, [step, factors]) => so * (factors[outcomes.get(step) ?? ''] ?? 1), weight);

/** How often a suspect gives this outcome at this step; 1 where the step says nothing about it. */
export const chanceOf = ({ shows }: Signs, step: string, outcome: string): number => {
  const chances = shows[step];
  return chances === undefined ? 1 : (chances[outcome] ?? 0);
};
