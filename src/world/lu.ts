/** Rows of complex numbers, re and im in turn. The last column is the right-hand side. */
export type Rows = readonly Float64Array[];

/** A pivot this small against what stood in its row is rounding: the equations do not decide that unknown. */
const NO_PIVOT_RATIO = 1e-15;

/**
 * Solves A x = b by elimination with partial pivoting, in place. Gives x, or the column that has no pivot.
 *
 * Source: Golub and Van Loan, Matrix Computations, "Gaussian elimination with partial pivoting", from memory; complex
 * entries. Own code, since the whole of it is one page and a page of the site has to load it. Rows with a zero in the
 * pivot's column are passed over, which is most of them: a circuit's matrix is nearly empty.
 */
export function solveRows(rows: Rows): { ok: true; x: Float64Array } | { ok: false; column: number } {
  const order = [...rows];
  const size = order.length;
  const scales = order.map((row) => largestIn(row, 2 * size));
  for (let k = 0; k < size; k++) {
    const pivot = largestBelow(order, k);
    const row = order[pivot] as Float64Array;
    if (Math.hypot(row[2 * k] as number, row[2 * k + 1] as number) <= NO_PIVOT_RATIO * (scales[pivot] as number)) {
      return { ok: false, column: k };
    }
    [order[k], order[pivot]] = [row, order[k] as Float64Array];
    [scales[k], scales[pivot]] = [scales[pivot] as number, scales[k] as number];
    for (let i = k + 1; i < size; i++) eliminate(order[i] as Float64Array, row, k);
  }
  return { ok: true, x: substitute(order) };
}

function largestIn(row: Float64Array, until: number): number {
  let most = 0;
  for (let j = 0; j < until; j++) {
    const size = Math.abs(row[j] as number);
    if (size > most) most = size;
  }
  return most;
}

function largestBelow(rows: Rows, k: number): number {
  let best = k;
  let most = -1;
  for (let i = k; i < rows.length; i++) {
    const row = rows[i] as Float64Array;
    const [re, im] = [row[2 * k] as number, row[2 * k + 1] as number];
    const size = re * re + im * im;
    if (size > most) [best, most] = [i, size];
  }
  return best;
}

/** Takes away the multiple of the pivot's row that clears column k. */
function eliminate(target: Float64Array, pivotRow: Float64Array, k: number): void {
  const [re, im] = [target[2 * k] as number, target[2 * k + 1] as number];
  if (re === 0 && im === 0) return;
  const [pivotRe, pivotIm] = [pivotRow[2 * k] as number, pivotRow[2 * k + 1] as number];
  const square = pivotRe * pivotRe + pivotIm * pivotIm;
  const factorRe = (re * pivotRe + im * pivotIm) / square;
  const factorIm = (im * pivotRe - re * pivotIm) / square;
  for (let j = 2 * k; j < target.length; j += 2) {
    const [a, b] = [pivotRow[j] as number, pivotRow[j + 1] as number];
    if (a === 0 && b === 0) continue;
    target[j] = (target[j] as number) - (factorRe * a - factorIm * b);
    target[j + 1] = (target[j + 1] as number) - (factorRe * b + factorIm * a);
  }
}

function substitute(rows: Rows): Float64Array {
  const size = rows.length;
  const x = new Float64Array(2 * size);
  for (let i = size - 1; i >= 0; i--) {
    const row = rows[i] as Float64Array;
    let re = row[2 * size] as number;
    let im = row[2 * size + 1] as number;
    for (let j = i + 1; j < size; j++) {
      const [a, b] = [row[2 * j] as number, row[2 * j + 1] as number];
      if (a === 0 && b === 0) continue;
      re -= a * (x[2 * j] as number) - b * (x[2 * j + 1] as number);
      im -= a * (x[2 * j + 1] as number) + b * (x[2 * j] as number);
    }
    const [a, b] = [row[2 * i] as number, row[2 * i + 1] as number];
    const square = a * a + b * b;
    x[2 * i] = (re * a + im * b) / square;
    x[2 * i + 1] = (im * a - re * b) / square;
  }
  return x;
}
