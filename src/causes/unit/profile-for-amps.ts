import type { RepairAction } from '../repair-action.ts';

/** What is asked for where all that plays hangs on amplifiers that take any source. */
export const FOR_AMPLIFIERS: RepairAction = {
  do: 'select-profile',
  rear: 'on',
  level: 'lowered',
  boost: 'none',
  eq: 'same',
};
