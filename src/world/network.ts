import type { Complex } from './complex.ts';

/** A pair of nodes. Volts across it and amperes through it count from the first to the second. */
export type Pair = readonly [from: string, to: string];

/**
 * The law of a branch whose current is an unknown of its own:
 * V(from) − V(to) = driveV + seriesOhm × I + Σ gain × V(over), with I flowing from `from` through it to `to`.
 */
export interface BranchLaw {
  readonly driveV?: Complex;
  readonly seriesOhm?: Complex;
  readonly follows?: readonly { readonly over: Pair; readonly gainRatio: Complex }[];
}

/** What an element may do to the equations. It names nodes and branches, and never sees a row. */
export interface System {
  /** 0 for the steady state. Every law is written once, for any frequency. */
  readonly frequencyHz: number;
  addAdmittance(between: Pair, admittanceS: Complex): void;
  /** A current that flows whatever the volts are. */
  addCurrent(through: Pair, currentA: Complex): void;
  /** Asks for one more unknown, the current of the branch `name`, and fixes the volts across it by its law. */
  addBranch(name: string, between: Pair, law: BranchLaw): void;
}

/** What a solved network is asked by its elements. */
export interface Reading {
  readonly frequencyHz: number;
  voltageV(node: string): Complex;
  /** The current of a branch that an element asked for. */
  branchA(name: string): Complex;
}

/** What flows from one node of a network through an element to another. */
export interface Flow {
  readonly through: Pair;
  readonly currentA: Complex;
}

/** One part of a network. Its law stands once and gives both what it adds to the equations and what flows in it. */
export interface Element {
  readonly id: string;
  /** What it is, for rules that ask for a kind ("a network has a battery"). */
  readonly kind: string;
  /** Pairs between which it lets a current pass: a node on none of them hangs in the air. */
  readonly paths: readonly Pair[];
  /** Nodes that it only senses, so that they need a path from elsewhere. */
  readonly senses?: readonly string[];
  /** Pairs whose volts it dictates whatever current that takes: two of them in a ring have no answer. */
  readonly dictates?: readonly Pair[];
  /** Values without which it makes no sense, by name with unit: each has to be finite and above 0. */
  readonly positive?: Readonly<Record<string, number>>;
  /** The same for values that may be 0. */
  readonly notNegative?: Readonly<Record<string, number>>;
  stamp(system: System): void;
  /** Everything that flows in it, its main current first. */
  flows(at: Reading): readonly Flow[];
}

/** Elements, the node that counts as 0 V, and the frequency at which they are looked at. */
export interface Network {
  readonly elements: readonly Element[];
  readonly reference: string;
  readonly frequencyHz: number;
}

/** Why a network has no solution, by the name of what is to blame. */
export type Refusal =
  | { readonly reason: 'floating-node'; readonly node: string }
  | { readonly reason: 'source-loop'; readonly element: string }
  | { readonly reason: 'bad-value'; readonly element: string; readonly value: string }
  | { readonly reason: 'same-name'; readonly element: string }
  | { readonly reason: 'no-battery' }
  | { readonly reason: 'no-pivot'; readonly at: string }
  | { readonly reason: 'no-operating-point'; readonly element: string };

export interface Solved {
  readonly ok: true;
  readonly frequencyHz: number;
  has(node: string): boolean;
  voltageV(node: string): Complex;
  /** V(from) − V(to). */
  acrossV(pair: Pair): Complex;
  /** The main current of an element. */
  currentA(element: string): Complex;
  flows(element: string): readonly Flow[];
}
export type Solution = Solved | ({ readonly ok: false } & Refusal);
