import { NO_PIVOT_RATIO, type Plan, planFor } from './elimination-plan.ts';
import type { SparseEquations } from './equations.ts';

/** By pattern: the plans that were made for it, the latest first. A bike has few patterns, whatever its values. */
const plans = new Map<number, Plan[]>();

/** A multiple of the pivot's row larger than this lets rounding grow: other pivots are chosen for these numbers. */
const MOST_TIMES = 1e5;

const isFor = (plan: Plan, { size, rows, columns }: SparseEquations): boolean =>
  plan.size === size &&
  plan.rows.length === rows.length &&
  plan.rows.every((row, i) => row === rows[i] && plan.columns[i] === columns[i]);

/**
 * Solves A x = b. Gives x, re and im in turn, or the column that has no pivot. The plan of an earlier solution is
 * followed where the pattern is the same and its pivots are large enough for these numbers too; else one is made.
 */
export function solveEquations(
  equations: SparseEquations,
): { ok: true; x: Float64Array } | { ok: false; column: number } {
  const known = plans.get(equations.pattern) ?? [];
  for (const plan of known) {
    const x = isFor(plan, equations) ? follow(plan, equations) : null;
    if (x) return { ok: true, x };
  }
  const plan = planFor(equations);
  if ('noPivotIn' in plan) return { ok: false, column: plan.noPivotIn };
  plans.set(equations.pattern, [plan, ...known]);
  const x = follow(plan, equations);
  return x ? { ok: true, x } : { ok: false, column: plan.pivotColumn[plan.size - 1] ?? 0 };
}

/** Elimination and substitution as planned, or null where a pivot is too small for that. */
function follow(plan: Plan, { size, re, im, rows, given }: SparseEquations): Float64Array | null {
  const { slotOf, pivotRow, pivotColumn, pivotSlot, targetsFrom, restFrom, targetRow, targetSlot } = plan;
  const { restColumn, restSlot, changedSlot } = plan;
  const a = new Float64Array(2 * plan.slots);
  for (let i = 0; i < slotOf.length; i++) {
    const slot = 2 * (slotOf[i] as number);
    a[slot] = (a[slot] as number) + (re[i] as number);
    a[slot + 1] = (a[slot + 1] as number) + (im[i] as number);
  }
  const scales = new Float64Array(size);
  for (let i = 0; i < slotOf.length; i++) {
    const slot = 2 * (slotOf[i] as number);
    const row = rows[i] as number;
    const is = Math.max(Math.abs(a[slot] as number), Math.abs(a[slot + 1] as number));
    if (is > (scales[row] as number)) scales[row] = is;
  }
  const b = new Float64Array(2 * size);
  for (let i = 0; i < given.rows.length; i++) {
    const row = 2 * (given.rows[i] as number);
    b[row] = (b[row] as number) + (given.re[i] as number);
    b[row + 1] = (b[row + 1] as number) + (given.im[i] as number);
  }

  let change = 0;
  for (let k = 0; k < size; k++) {
    const row = pivotRow[k] as number;
    const slot = 2 * (pivotSlot[k] as number);
    const [pivotRe, pivotIm] = [a[slot] as number, a[slot + 1] as number];
    const square = pivotRe * pivotRe + pivotIm * pivotIm;
    const least = NO_PIVOT_RATIO * (scales[row] as number);
    if (!(square > least * least)) return null;
    const [givenRe, givenIm] = [b[2 * row] as number, b[2 * row + 1] as number];
    const [restStart, restEnd] = [restFrom[k] as number, restFrom[k + 1] as number];
    for (let t = targetsFrom[k] as number; t < (targetsFrom[k + 1] as number); t++) {
      const at = 2 * (targetSlot[t] as number);
      const [valueRe, valueIm] = [a[at] as number, a[at + 1] as number];
      const timesRe = (valueRe * pivotRe + valueIm * pivotIm) / square;
      const timesIm = (valueIm * pivotRe - valueRe * pivotIm) / square;
      if (timesRe * timesRe + timesIm * timesIm > MOST_TIMES * MOST_TIMES) return null;
      const target = 2 * (targetRow[t] as number);
      b[target] = (b[target] as number) - (timesRe * givenRe - timesIm * givenIm);
      b[target + 1] = (b[target + 1] as number) - (timesRe * givenIm + timesIm * givenRe);
      for (let j = restStart; j < restEnd; j++) {
        const from = 2 * (restSlot[j] as number);
        const to = 2 * (changedSlot[change++] as number);
        const [fromRe, fromIm] = [a[from] as number, a[from + 1] as number];
        a[to] = (a[to] as number) - (timesRe * fromRe - timesIm * fromIm);
        a[to + 1] = (a[to + 1] as number) - (timesRe * fromIm + timesIm * fromRe);
      }
    }
  }

  const x = new Float64Array(2 * size);
  for (let k = size - 1; k >= 0; k--) {
    const row = 2 * (pivotRow[k] as number);
    let [sumRe, sumIm] = [b[row] as number, b[row + 1] as number];
    for (let j = restFrom[k] as number; j < (restFrom[k + 1] as number); j++) {
      const from = 2 * (restSlot[j] as number);
      const column = 2 * (restColumn[j] as number);
      const [fromRe, fromIm, xRe, xIm] = [a[from], a[from + 1], x[column], x[column + 1]] as [
        number,
        number,
        number,
        number,
      ];
      sumRe -= fromRe * xRe - fromIm * xIm;
      sumIm -= fromRe * xIm + fromIm * xRe;
    }
    const slot = 2 * (pivotSlot[k] as number);
    const [pivotRe, pivotIm] = [a[slot] as number, a[slot + 1] as number];
    const square = pivotRe * pivotRe + pivotIm * pivotIm;
    const own = 2 * (pivotColumn[k] as number);
    x[own] = (sumRe * pivotRe + sumIm * pivotIm) / square;
    x[own + 1] = (sumIm * pivotRe - sumRe * pivotIm) / square;
  }
  return x;
}
