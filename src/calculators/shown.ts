import type { Calculator, Result } from './calculator.ts';
import type { Worked } from './typed.ts';

/** What stands on the page: a result, and why it is an old one, if it is. */
export interface Shown {
  readonly result?: Result;
  readonly notice?: string;
}

/** What is shown for what is filled in now: its result, or the last one that could be worked out, marked as such. */
export function shown({ inputs }: Calculator, { result, errors, together }: Worked, last?: Result): Shown {
  if (result) return { result };
  const [wrong] = Object.keys(errors).flatMap((id) => inputs[id]?.label ?? []);
  const why = together ?? `“${wrong}” below cannot be used yet.`;
  return { ...(last && { result: last }), notice: `${why} This is the last result that could be worked out.` };
}
