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
 * words are there: a guess would be put into somebody's mouth. The first rule of a step wins.
 * @param rules what words give, each of their words put as the one that stands for it, once
 * @param oneFor the word that stands for another
 * @returns the answers for what was said, by step
 */
export function factReader(rules: readonly FactRule[], oneFor: (word: string) => string) {
  const prepared = rules.map(({ fact, in: flows, all, none = [] }) => {
    const [step = '', option = ''] = fact.split('=');
    return {
      step,
      option,
      flows,
      all: all.map((choices) => choices.split('|').map(oneFor)),
      none: none.map(oneFor),
    };
  });
  return (said: ReadonlySet<string>, { flow }: Document): Readonly<Record<string, string>> => {
    const facts: Record<string, string> = {};
    if (flow === undefined) return facts;
    const isSaid = (word: string) => said.has(word);
    for (const { step, option, flows, all, none } of prepared) {
      if (facts[step] !== undefined || !flows.includes(flow)) continue;
      if (all.every((choices) => choices.some(isSaid)) && !none.some(isSaid)) facts[step] = option;
    }
    return facts;
  };
}
