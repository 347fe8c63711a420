import type { Network, Refusal } from '../network.ts';

/** A value that makes no sense: a wire without length, a load below zero. The value's name brings its unit. */
export function badValue({ elements }: Network): Refusal | null {
  for (const { id, positive = {}, notNegative = {} } of elements) {
    const bad =
      Object.entries(positive).find(([, value]) => !(value > 0 && value < Infinity)) ??
      Object.entries(notNegative).find(([, value]) => !(value >= 0 && value < Infinity));
    if (bad) return { reason: 'bad-value', element: id, value: `${bad[0]} ${bad[1]}` };
  }
  return null;
}

/** Two elements of one name: what is said of one of them would be said of both. */
export function sameName({ elements }: Network): Refusal | null {
  const seen = new Set<string>();
  for (const { id } of elements) {
    if (seen.has(id)) return { reason: 'same-name', element: id };
    seen.add(id);
  }
  return null;
}
