import { NO_PIVOT_RATIO, type Plan, planFor } from './elimination-plan.ts';
import type { SparseEquations } from './equations.ts';

/** By pattern: the plans that were made for it, the latest first. A bike has few patterns, whatever its values. */
const plans = new Map<number, Plan[]>();

/** A multiple of the pivot's row larger than this lets rounding grow: other pivots are chosen for these numbers. */
const MOST_TIMES = 1e5;

function isFor(plan: Plan, { size, parts }: SparseEquations): boolean {
  let at = 0;
  for (const { rows, columns } of parts)
    for (let i = 0; i < rows.length; i++, at++)
      if (plan.rows[at] !== rows[i] || plan.columns[at] !== columns[i]) return false;
  return plan.size === size && plan.rows.length === at;
}

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

/** What the elimination works on: used by one solution after the other, since making it anew takes longer than the work. */
let bench = { a: new Float64Array(0), b: new Float64Array(0), scales: new Float64Array(0) };

/** The bench with the numbers of these equations on it: by slot, by row, and the largest of each row. */
function laidOut({ slots, slotOf }: Plan, { size, parts }: SparseEquations): typeof bench {
  if (bench.a.length < 2 * slots || bench.scales.length < size)
    bench = { a: new Float64Array(4 * slots), b: new Float64Array(4 * size), scales: new Float64Array(2 * size) };
  const { a, b, scales } = bench;
  a.fill(0, 0, 2 * slots);
  b.fill(0, 0, 2 * size);
  scales.fill(0, 0, size);
  let at = 0;
  for (const { rows, re, im, given } of parts) {
    for (let i = 0; i < rows.length; i++, at++) {
      const slot = 2 * (slotOf[at] as number);
      a[slot] = (a[slot] as number) + (re[i] as number);
      a[slot + 1] = (a[slot + 1] as number) + (im[i] as number);
    }
    for (let i = 0; i < given.rows.length; i++) {
      const row = 2 * (given.rows[i] as number);
      b[row] = (b[row] as number) + (given.re[i] as number);
      b[row + 1] = (b[row + 1] as number) + (given.im[i] as number);
    }
  }
  at = 0;
  for (const { rows } of parts)
    for (let i = 0; i < rows.length; i++, at++) {
      const slot = 2 * (slotOf[at] as number);
      const is = Math.max(Math.abs(a[slot] as number), Math.abs(a[slot + 1] as number));
      if (is > (scales[rows[i] as number] as number)) scales[rows[i] as number] = is;
    }
  return bench;
}

/** Elimination and substitution as planned, or null where a pivot is too small for that. */
function follow(plan: Plan, equations: SparseEquations): Float64Array | null {
  const { size, pivotRow, pivotColumn, pivotSlot, targetsFrom, restFrom, targetRow, targetSlot } = plan;
  const { restColumn, restSlot, changedSlot } = plan;
  const { a, b, scales } = laidOut(plan, equations);

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
