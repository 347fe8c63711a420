import type { Facts } from '../step.ts';
import { metersDigit } from './meter-digit.ts';

/** The smallest AC digit of the meter at hand; that of a basic meter until somebody has said. */
export function smallestDigitV(facts: Facts): number {
  const answer = facts[metersDigit.id];
  return answer && 'option' in answer && Object.hasOwn(metersDigit.options, answer.option)
    ? Number(answer.option)
    : 0.1;
}
