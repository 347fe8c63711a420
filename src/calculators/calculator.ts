import type { ChoiceField, Field, NumberField } from '../rig/fields.ts';
import type { Rig } from '../rig/rig.ts';
import type { CautionId } from '../steps/cautions.ts';
import type { Picture } from './picture.ts';

export type Inputs = Readonly<Record<string, Field>>;
type ValueOf<F> = F extends NumberField ? number : F extends ChoiceField ? Extract<keyof F['options'], string> : never;
/** A value in SI for each field. */
export type ValuesOf<I extends Inputs> = { readonly [K in keyof I]: ValueOf<I[K]> };

/** One line of a result: what it is, the figure, and what it means where a figure alone does not say it. */
export interface Line {
  readonly label: string;
  readonly text: string;
  readonly note?: string;
  /** Whether it is as it should be. */
  readonly mood?: 'good' | 'bad';
}

export interface Result {
  /** The answer first. */
  readonly lines: readonly Line[];
  readonly picture: Picture;
  /** What the picture shows, for whoever cannot see it. */
  readonly says: string;
}

/** A small tool of its own: some fields, a result, and where its formulas are from. */
export interface Calculator<I extends Inputs = Inputs> {
  readonly id: string;
  readonly title: string;
  /** The question that it answers, in a rider's words. */
  readonly asks: string;
  readonly inputs: I;
  /** What is known of it from "my bike". */
  readonly fromBike?: (rig: Rig) => Partial<ValuesOf<I>>;
  /** @throws {CannotWork} where values that are allowed by themselves do not go together. */
  readonly result: (values: ValuesOf<I>) => Result;
  readonly cautions?: readonly CautionId[];
  readonly sources: readonly string[];
  /** The slug of the article that explains it. */
  readonly article: string;
}

/** Values that do not go together: the message says which, and what would. */
export class CannotWork extends Error {}

/** Keeps the types of the fields while it checks the rest. */
export const calculator = <const I extends Inputs>(one: Calculator<I>): Calculator => one as unknown as Calculator;

/** Leaves out what is not known. */
export const known = <T extends object>(values: { [K in keyof T]: T[K] | undefined }): Partial<T> =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Partial<T>;
