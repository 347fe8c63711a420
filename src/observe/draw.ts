/** Chance with a seed: each call gives a number from 0 up to, not including, 1. The same seed gives the same numbers. */
export type Draw = () => number;

/** FNV-1a over the characters of a text, 32 bits. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/**
 * A stream of its own for every list of names and numbers, so that a case can be played again without those before it.
 *
 * Mulberry32, a generator of 32 bits in the public domain, from memory. Good enough to choose bikes, not to keep secrets.
 */
export function drawFrom(...seeds: readonly (string | number)[]): Draw {
  let state = hashOf(seeds.join('\n'));
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** One of a list that is not empty. */
export function pick<T>(draw: Draw, from: readonly T[]): T {
  if (from.length === 0) throw new RangeError('from must not be empty');
  return from[Math.floor(draw() * from.length)] as T;
}

export const between = (draw: Draw, low: number, high: number): number => low + draw() * (high - low);
export const happens = (draw: Draw, chance: number): boolean => draw() < chance;
