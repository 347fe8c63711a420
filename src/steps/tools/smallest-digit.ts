import type { Facts, Situation } from '../step.ts';
import { metersDigit } from './meter-digit.ts';

/** Whether this meter is fine enough for a reading of "nothing" to prove something. */
export const readsFine = ({ facts }: Situation): boolean => smallestDigitV(facts) < 0.1;

/** The smallest AC digit of the meter at hand; that of a basic meter until somebody has said. */
export function smallestDigitV(facts: Facts): number {
  const answer = facts[metersDigit.id];
  return answer && 'option' in answer && Object.hasOwn(metersDigit.options, answer.option)
    ? Number(answer.option)
    : 0.1;
}
