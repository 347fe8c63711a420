import { upperFirst } from '../../compute/first-letter.ts';
import type { PlanRemedy } from '../../plan/verdict.ts';

/** What an answer hangs on, and what would follow where it is open, a line each: on paper and on the phone. */
export const conditionsIn = ({ unless = [], findings = [] }: PlanRemedy): readonly string[] => [
  ...unless.map(({ when, follows }) => `Unless it reads “${when}”: ${follows}.`),
  ...findings.map(
    ({ when, follows, who, minutes }) =>
      `${upperFirst(when)}: ${follows}${minutes > 0 ? ` (${who}, ${minutes} min)` : ''}.`,
  ),
];
