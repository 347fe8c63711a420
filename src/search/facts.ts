import type { Document } from './document.ts';

/** When words give an answer. */
export interface FactRule {
  /** `step=option` */
  readonly fact: string;
  /** The flows that ask for it. */
  readonly in: readonly string[];
  /** A word of each of these has to be there; the choices stand between strokes. */
  readonly all: readonly string[];
  /** None of these may be. */
  readonly none?: readonly string[];
}

/**
 * The answers that somebody's words already give to the flow that starts from a complaint. A fact is taken only where its
 * words are there as they are: a guess would be put into somebody's mouth. The first rule of a step wins.
 * @param said the words, each as the one that stands for it
 * @param oneFor the word that stands for those of a rule
 */
export function factsIn(
  said: ReadonlySet<string>,
  { flow }: Document,
  rules: readonly FactRule[],
  oneFor: (word: string) => string,
): Readonly<Record<string, string>> {
  if (flow === undefined) return {};
  const facts: Record<string, string> = {};
  const isSaid = (word: string) => said.has(oneFor(word));
  for (const { fact, in: flows, all, none = [] } of rules) {
    const [step = '', option = ''] = fact.split('=');
    if (facts[step] !== undefined || !flows.includes(flow)) continue;
    if (all.every((choices) => choices.split('|').some(isSaid)) && !none.some(isSaid)) facts[step] = option;
  }
  return facts;
}
