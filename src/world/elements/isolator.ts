import { real, ZERO } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { branch } from './source.ts';

interface Isolator {
  readonly gainRatio: number;
  readonly sourceOhm: number;
}

/**
 * What turns a speaker pair into a line-level pair (a transformer, or an output of its own): the tone passes in
 * proportion, DC does not, and the two sides share no wire. It takes no current from what it listens to; its own two
 * wires come from `sourceOhm`.
 */
export const isolator = (id: string, from: Pair, to: Pair, { gainRatio, sourceOhm }: Isolator): Element =>
  branch({ id, kind: 'isolator', senses: from, positive: { sourceOhm }, notNegative: { gainRatio } }, to, (hz) => ({
    seriesOhm: real(sourceOhm),
    follows: [{ over: from, gainRatio: hz === 0 ? ZERO : real(gainRatio) }],
  }));
