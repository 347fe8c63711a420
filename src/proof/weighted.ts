import type { Draw } from '../observe/draw.ts';

/** One of several, each as often as its weight says. */
export function weighted<T>(draw: Draw, from: readonly (readonly [T, number])[]): T | undefined {
  let left = draw() * from.reduce((sum, [, weight]) => sum + weight, 0);
  for (const [one, weight] of from) {
    left -= weight;
    if (weight > 0 && left <= 0) return one;
  }
  return from.at(-1)?.[0];
}
