import { type Complex, ONE } from './complex.ts';
import type { BranchLaw, Element, Network, Pair, System } from './network.ts';

/** Numbers for a row and a column at a time, where several at one place add up; `given` are those of the right-hand side. */
export interface Entries {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly re: readonly number[];
  readonly im: readonly number[];
  readonly given: { readonly rows: readonly number[]; readonly re: readonly number[]; readonly im: readonly number[] };
}

/**
 * Linear equations of which most places are empty, in parts. The pattern is a number made of all places, in their order:
 * equations of different patterns cannot be solved in the same steps.
 */
export interface SparseEquations {
  readonly size: number;
  readonly parts: readonly Entries[];
  readonly pattern: number;
}

class OwnEntries implements Entries {
  readonly rows: number[] = [];
  readonly columns: number[] = [];
  readonly re: number[] = [];
  readonly im: number[] = [];
  readonly given: { rows: number[]; re: number[]; im: number[] } = { rows: [], re: [], im: [] };
}

/** Which unknown a name is. Names that were there before these are looked up where they are. */
class Unknowns {
  readonly #own = new Map<string, number>();
  readonly #before: Unknowns | undefined;
  constructor(before?: Unknowns) {
    this.#before = before;
  }
  get(name: string): number | undefined {
    return this.#own.get(name) ?? this.#before?.get(name);
  }
  set(name: string, column: number): void {
    this.#own.set(name, column);
  }
  nameOf(column: number): string | undefined {
    for (const [name, at] of this.#own) if (at === column) return name;
    return this.#before?.nameOf(column);
  }
}

/** The reference has no equation and no unknown of its own. */
const NONE = -1;

/**
 * Modified nodal analysis: one equation a node (what flows out of it adds up to nothing), one a branch (its law).
 *
 * Source: Ho, Ruehli and Brennan, The modified nodal approach to network analysis, IEEE Trans. CAS-22 (1975) 504–509.
 */
export class Equations implements System, SparseEquations {
  readonly reference: string;
  readonly frequencyHz: number;
  readonly elements: readonly Element[];
  readonly nodes: Unknowns;
  readonly branches: Unknowns;
  readonly parts: readonly Entries[];
  readonly #own = new OwnEntries();
  size: number;
  pattern: number;

  /** The equations of a network; `before` are those of elements that it has besides. */
  constructor({ elements, reference, frequencyHz }: Network, before?: Equations) {
    this.reference = reference;
    this.frequencyHz = frequencyHz;
    this.elements = before ? [...elements, ...before.elements] : elements;
    this.nodes = new Unknowns(before?.nodes);
    this.branches = new Unknowns(before?.branches);
    this.parts = before ? [...before.parts, this.#own] : [this.#own];
    this.size = before?.size ?? 0;
    this.pattern = before?.pattern ?? 0;
    for (const element of elements) {
      for (const [from, to] of element.paths) {
        this.#column(from);
        this.#column(to);
      }
      if (element.senses) for (const node of element.senses) this.#column(node);
      element.stamp(this);
    }
  }

  /** The equations with more elements. These stay as they are. */
  with(elements: readonly Element[]): Equations {
    return new Equations({ elements, reference: this.reference, frequencyHz: this.frequencyHz }, this);
  }

  addAdmittance([from, to]: Pair, { re, im }: Complex): void {
    const [a, b] = [this.#column(from), this.#column(to)];
    this.#put(a, a, re, im);
    this.#put(b, b, re, im);
    this.#put(a, b, -re, -im);
    this.#put(b, a, -re, -im);
  }

  addCurrent([from, to]: Pair, { re, im }: Complex): void {
    this.#give(this.#column(from), -re, -im);
    this.#give(this.#column(to), re, im);
  }

  addBranch(name: string, [from, to]: Pair, { driveV, seriesOhm, follows }: BranchLaw): void {
    const own = this.size++;
    this.branches.set(name, own);
    const [a, b] = [this.#column(from), this.#column(to)];
    this.#put(a, own, ONE.re, ONE.im);
    this.#put(b, own, -ONE.re, -ONE.im);
    this.#put(own, a, ONE.re, ONE.im);
    this.#put(own, b, -ONE.re, -ONE.im);
    if (seriesOhm) this.#put(own, own, -seriesOhm.re, -seriesOhm.im);
    if (driveV) this.#give(own, driveV.re, driveV.im);
    if (follows)
      for (const { over, gainRatio } of follows) {
        this.#put(own, this.#column(over[0]), -gainRatio.re, -gainRatio.im);
        this.#put(own, this.#column(over[1]), gainRatio.re, gainRatio.im);
      }
  }

  #column(node: string): number {
    if (node === this.reference) return NONE;
    const known = this.nodes.get(node);
    if (known !== undefined) return known;
    const column = this.size++;
    this.nodes.set(node, column);
    return column;
  }

  #put(row: number, column: number, re: number, im: number): void {
    if (row === NONE || column === NONE) return;
    this.#own.rows.push(row);
    this.#own.columns.push(column);
    this.#own.re.push(re);
    this.#own.im.push(im);
    this.pattern = Math.imul(Math.imul(this.pattern ^ row, 0x01000193) ^ column, 0x01000193);
  }

  #give(row: number, re: number, im: number): void {
    if (row === NONE) return;
    this.#own.given.rows.push(row);
    this.#own.given.re.push(re);
    this.#own.given.im.push(im);
  }
}
