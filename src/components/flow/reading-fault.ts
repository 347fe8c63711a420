import { isLoneOne, parseQuantity } from '../../compute/quantity.ts';
import { isPossible } from '../../steps/outcome.ts';
import type { ReadingStep } from '../../steps/step.ts';

/** What is wrong with a reading as typed. */
export interface Fault {
  readonly message: string;
  /** What it can mean, each with the text that says so. */
  readonly meanings?: readonly { readonly label: string; readonly text: string }[];
}

const REALLY = 'If the meter really shows this, choose “I can’t do this”: we go on without it.';

const LONE_ONE: Fault = {
  message: 'Old meters show a lone 1 for over range. Is it 1 Ω, or over range?',
  meanings: [
    { label: '1 Ω', text: '1 Ω' },
    { label: 'Over range (OL)', text: 'OL' },
  ],
};

/** What is wrong with one reading as typed, or null. */
export function faultOf(step: ReadingStep, name: string, text: string): Fault | null {
  const reading = step.readings[name];
  if (!reading) return null;
  if (text.trim() === '')
    return reading.optional ? null : { message: 'This reading is needed. Type what the meter shows.' };
  if (isLoneOne(text, reading.unit)) return LONE_ONE;
  const parsed = parseQuantity(text, reading.unit);
  if (!parsed.ok) return { message: parsed.message };
  const possible = isPossible(step, name, parsed.over ? Infinity : parsed.value);
  return possible ? null : { message: `${reading.impossible} ${REALLY}` };
}

/**
 * Whether a fault is said while the field is in hand. A number that cannot be is a fault as soon as it stands there;
 * anything else may only be half typed, and is a fault when the field has been left or sent.
 */
export const isSaidWhileTyping = (text: string, reading: ReadingStep['readings'][string]): boolean =>
  text.trim() !== '' && !isLoneOne(text, reading.unit) && parseQuantity(text, reading.unit).ok;
