import type { Chances, Signs } from './signs.ts';

/** Two faults that give the same outcomes as often as this, or nearly, are not told apart by a step. */
const ALIKE_SHARE = 0.05;

/** Half the sum of all differences: how often a step gives what only one of the two gives. */
const apart = (a: Chances, b: Chances): number => {
  const outcomes = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...outcomes].reduce((sum, outcome) => sum + Math.abs((a[outcome] ?? 0) - (b[outcome] ?? 0)), 0) / 2;
};

/** Whether a step tells two suspects apart, at least now and then. */
export function tellsApart(step: string, a: Signs, b: Signs): boolean {
  const [one, other] = [a.shows[step], b.shows[step]];
  if (one && other) return apart(one, other) > ALIKE_SHARE;
  return false;
}

/** Whether any of the steps, or the history, tells two suspects apart. */
export function areTwins(a: Signs, b: Signs, steps: readonly string[]): boolean {
  if (steps.some((step) => tellsApart(step, a, b))) return false;
  return steps.every((step) => {
    const factors = new Set([...Object.keys(a.odds?.[step] ?? {}), ...Object.keys(b.odds?.[step] ?? {})]);
    return [...factors].every((outcome) => (a.odds?.[step]?.[outcome] ?? 1) === (b.odds?.[step]?.[outcome] ?? 1));
  });
}

/** Sorts suspects into classes: in one class are those that no step available here tells apart, history included. */
export function twinClasses<S extends Signs>(
  suspects: readonly S[],
  steps: readonly string[],
): readonly (readonly S[])[] {
  const classes: S[][] = [];
  for (const suspect of suspects) {
    const own = classes.find((others) => others.some((other) => areTwins(suspect, other, steps)));
    if (own) own.push(suspect);
    else classes.push([suspect]);
  }
  return classes;
}
