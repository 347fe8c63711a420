import type { Field } from '../rig/fields.ts';
import type { Rig } from '../rig/rig.ts';
import { readField, type Typed, typedFrom } from '../rig/typed-field.ts';
import { type Calculator, CannotWork, type Result } from './calculator.ts';

/*
 * What stands in the fields of a calculator, apart from how it looks: from "my bike", from a link, or typed; and what
 * comes of it.
 */

/** The longest text of a link that is looked at. */
const LONGEST_LINK = 2000;

/** The texts that a link carries, as far as the calculator has such fields. */
export function typedInLink(one: Calculator, hash: string): Typed {
  const params = new URLSearchParams(hash.replace(/^#/, '').slice(0, LONGEST_LINK));
  return Object.fromEntries([...params].filter(([id]) => Object.hasOwn(one.inputs, id)));
}

/** The part of an address that carries what is filled in. */
export function linkOf(one: Calculator, typed: Typed): string {
  const filled = Object.keys(one.inputs).flatMap((id) => {
    const text = typed[id]?.trim();
    return text ? [[id, text]] : [];
  });
  return `#${new URLSearchParams(filled)}`;
}

/** The texts of what is known from "my bike". */
export const typedFromBike = (one: Calculator, rig: Rig): Typed => typedFrom(one.inputs, one.fromBike?.(rig) ?? {});

export interface Worked {
  readonly result?: Result;
  /** What is wrong, by field; under `together` what does not go together. */
  readonly errors: Readonly<Record<string, string>>;
  readonly together?: string;
  /** Numbers for which the usual value stands in. */
  readonly assumed: readonly string[];
}

/** The result of what is filled in, the usual values standing in for the rest; or what is wrong with it. */
export function worked(one: Calculator, typed: Typed): Worked {
  const errors: Record<string, string> = {};
  const assumed: string[] = [];
  const values: Record<string, number | string> = {};
  for (const [id, field] of Object.entries(one.inputs) as [string, Field][]) {
    const read = readField(field, typed[id] ?? '');
    if ('error' in read) errors[id] = read.error;
    else {
      if (read.value === undefined && field.kind === 'number') assumed.push(id);
      values[id] = read.value ?? field.typical;
    }
  }
  if (Object.keys(errors).length > 0) return { errors, assumed };
  try {
    return { result: one.result(values), errors, assumed };
  } catch (error) {
    if (error instanceof CannotWork) return { errors, assumed, together: error.message };
    throw error;
  }
}
