import type { Seat } from '../../browser/seat.ts';
import type { Step } from '../../steps/step.ts';
import type { Ready } from './ready.ts';

/** So many lines are read and done on the way to a measurement. */
const FEW_LINES = 4;
const BESIDE = '(min-width: 62em)';

/**
 * Whether so much has to be done before a measurement that it is a screen of its own, which is folded once it is done.
 * On a wide screen both stand side by side.
 */
export const isPreparedFirst = (step: Step, { bike, cautions }: Ready, seat: Seat): boolean =>
  seat === 'bike' &&
  step.kind === 'reading' &&
  bike.length + new Set(cautions).size > FEW_LINES &&
  !matchMedia(BESIDE).matches;
