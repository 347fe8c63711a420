import type { Answer } from '../src/steps/step.ts';

/** An answer written short: an option, `null` for "I can't", or readings as typed. */
export type Short = string | null | Readonly<Record<string, string>>;

export const toAnswer = (short: Short): Answer =>
  short === null ? { cannot: true } : typeof short === 'string' ? { option: short } : { readings: short };
