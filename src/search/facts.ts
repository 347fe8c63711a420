import FACTS from '../../content/words/facts.json' with { type: 'json' };
import type { Document } from './document.ts';
import { tokensOf } from './tokens.ts';

interface Rule {
  /** `step=option` */
  readonly fact: string;
  /** The flows that ask for it. */
  readonly in: readonly string[];
  /** A word of each of these has to be there; the choices stand between strokes. */
  readonly all: readonly string[];
  /** None of these may be. */
  readonly none?: readonly string[];
}
export const RULES: readonly Rule[] = FACTS;

/**
 * The answers that somebody's words already give to the flow that starts from a complaint. A fact is taken only where its
 * words are there as they are: a guess would be put into somebody's mouth. The first rule of a step wins.
 */
export function factsIn(query: string, { flow }: Document): Readonly<Record<string, string>> {
  if (flow === undefined) return {};
  const said = new Set(tokensOf(query));
  const facts: Record<string, string> = {};
  for (const { fact, in: flows, all, none = [] } of RULES) {
    const [step = '', option = ''] = fact.split('=');
    if (facts[step] !== undefined || !flows.includes(flow)) continue;
    if (
      all.every((choices) => choices.split('|').some((word) => said.has(word))) &&
      !none.some((word) => said.has(word))
    )
      facts[step] = option;
  }
  return facts;
}
