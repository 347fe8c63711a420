import type { SparseEquations } from './equations.ts';

/**
 * The steps in which equations of one pattern are solved, made once and followed for all numbers at its places. A slot
 * is a place that holds a number at some time: one of the pattern, or one that the elimination fills.
 */
export interface Plan {
  readonly size: number;
  /** By entry of the pattern: its place and its slot. */
  readonly rows: Int32Array;
  readonly columns: Int32Array;
  readonly slotOf: Int32Array;
  readonly slots: number;
  /** By step: row, column and slot of its pivot. */
  readonly pivotRow: Int32Array;
  readonly pivotColumn: Int32Array;
  readonly pivotSlot: Int32Array;
  /** From where to where the lists of a step reach, below: `from[k]` up to `from[k + 1]`. */
  readonly targetsFrom: Int32Array;
  readonly restFrom: Int32Array;
  /** Rows that still have a number in the column of the pivot, and the slot of that number. */
  readonly targetRow: Int32Array;
  readonly targetSlot: Int32Array;
  /** What else stands in the row of the pivot: column and slot. */
  readonly restColumn: Int32Array;
  readonly restSlot: Int32Array;
  /** For each target and each of the rest, in this order: the slot in the target's row. */
  readonly changedSlot: Int32Array;
}

/** A pivot this small against what stood in its row is rounding: the equations do not decide that unknown. */
export const NO_PIVOT_RATIO = 1e-15;
/** A pivot must not be smaller than this share of the largest number under it, or rounding grows. */
const LEAST_SHARE = 1e-3;

interface Cell {
  readonly slot: number;
  re: number;
  im: number;
}
type Row = Map<number, Cell>;
const sizeOf = ({ re, im }: Cell): number => Math.hypot(re, im);

/**
 * Chooses the pivots for these numbers: of those that are large enough in their column, the one whose elimination fills
 * least. Gives the column that has none when the equations decide nothing of it.
 *
 * Source: Markowitz, The elimination form of the inverse, Management Science 3 (1957) 255–269, from memory, with
 * threshold pivoting as in Duff, Erisman and Reid, Direct Methods for Sparse Matrices, from memory. Own code, since it
 * is one page, and a page of the site has to load it.
 */
export function planFor(equations: SparseEquations): Plan | { readonly noPivotIn: number } {
  const { size } = equations;
  const rows: Row[] = Array.from({ length: size }, () => new Map());
  const under: Set<number>[] = Array.from({ length: size }, () => new Set());
  let slots = 0;
  const cellAt = (row: number, column: number): Cell => {
    const there = rows[row]?.get(column);
    if (there) return there;
    const made = { slot: slots++, re: 0, im: 0 };
    rows[row]?.set(column, made);
    under[column]?.add(row);
    return made;
  };
  const slotOf = equations.parts.flatMap((part) =>
    part.rows.map((row, i) => {
      const cell = cellAt(row, part.columns[i] as number);
      cell.re += part.re[i] as number;
      cell.im += part.im[i] as number;
      return cell.slot;
    }),
  );
  const scales = rows.map((row) => Math.max(0, ...[...row.values()].map(sizeOf)));

  const left = new Set(rows.keys());
  const largestUnder = (column: number) => {
    let most = 0;
    for (const row of under[column] ?? []) most = Math.max(most, sizeOf(cellAt(row, column)));
    return most;
  };
  const bestPivot = () => {
    let best: { row: number; column: number; fills: number } | undefined;
    for (const row of left)
      for (const [column, cell] of rows[row] as Row) {
        const fills = ((rows[row] as Row).size - 1) * ((under[column] as Set<number>).size - 1);
        if (best && fills >= best.fills) continue;
        const is = sizeOf(cell);
        if (is <= NO_PIVOT_RATIO * (scales[row] as number) || is < LEAST_SHARE * largestUnder(column)) continue;
        best = { row, column, fills };
      }
    return best;
  };

  const pivots: { row: number; column: number; slot: number }[] = [];
  const targets: { row: number; slot: number }[][] = [];
  const rests: { column: number; slot: number }[][] = [];
  const changedSlot: number[] = [];
  while (left.size > 0) {
    const best = bestPivot();
    if (!best) return { noPivotIn: undecided(rows, left, pivots, size) };
    const pivotRow = rows[best.row] as Row;
    const pivot = pivotRow.get(best.column) as Cell;
    left.delete(best.row);
    for (const column of pivotRow.keys()) under[column]?.delete(best.row);
    const rest = [...pivotRow].filter(([column]) => column !== best.column);
    const square = pivot.re * pivot.re + pivot.im * pivot.im;
    const own = [...(under[best.column] as Set<number>)];
    targets.push(own.map((row) => ({ row, slot: cellAt(row, best.column).slot })));
    rests.push(rest.map(([column, { slot }]) => ({ column, slot })));
    pivots.push({ row: best.row, column: best.column, slot: pivot.slot });
    for (const row of own) {
      const target = rows[row] as Row;
      const { re, im } = target.get(best.column) as Cell;
      target.delete(best.column);
      const [timesRe, timesIm] = [(re * pivot.re + im * pivot.im) / square, (im * pivot.re - re * pivot.im) / square];
      for (const [column, taken] of rest) {
        const cell = cellAt(row, column);
        cell.re -= timesRe * taken.re - timesIm * taken.im;
        cell.im -= timesRe * taken.im + timesIm * taken.re;
        changedSlot.push(cell.slot);
      }
    }
    under[best.column]?.clear();
  }

  const starts = (lists: readonly (readonly unknown[])[]) => {
    const from = new Int32Array(lists.length + 1);
    for (const [k, list] of lists.entries()) from[k + 1] = (from[k] as number) + list.length;
    return from;
  };
  return {
    size,
    rows: Int32Array.from(equations.parts.flatMap((part) => part.rows)),
    columns: Int32Array.from(equations.parts.flatMap((part) => part.columns)),
    slotOf: Int32Array.from(slotOf),
    slots,
    pivotRow: Int32Array.from(pivots, ({ row }) => row),
    pivotColumn: Int32Array.from(pivots, ({ column }) => column),
    pivotSlot: Int32Array.from(pivots, ({ slot }) => slot),
    targetsFrom: starts(targets),
    restFrom: starts(rests),
    targetRow: Int32Array.from(targets.flat(), ({ row }) => row),
    targetSlot: Int32Array.from(targets.flat(), ({ slot }) => slot),
    restColumn: Int32Array.from(rests.flat(), ({ column }) => column),
    restSlot: Int32Array.from(rests.flat(), ({ slot }) => slot),
    changedSlot: Int32Array.from(changedSlot),
  };
}

/** A column that no equation is left for: the one where least is left. */
function undecided(
  rows: readonly Row[],
  left: ReadonlySet<number>,
  pivots: readonly { column: number }[],
  size: number,
): number {
  const done = new Set(pivots.map(({ column }) => column));
  const most = new Map<number, number>();
  for (const row of left)
    for (const [column, cell] of rows[row] as Row) most.set(column, Math.max(most.get(column) ?? 0, sizeOf(cell)));
  const open = Array.from({ length: size }, (_, column) => column).filter((column) => !done.has(column));
  return open.reduce(
    (least, column) => ((most.get(column) ?? 0) < (most.get(least) ?? 0) ? column : least),
    open[0] ?? 0,
  );
}
