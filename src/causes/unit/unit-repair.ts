import type { Remedy } from '../cause.ts';

/** A head unit that has to be repaired: by whom, and what is done before. */
export const UNIT_REPAIR = {
  who: 'An electronics workshop, or a dealer.',
  parts: ['Repair or exchange of the head unit'],
  repair: [{ do: 'repair-unit' }],
} as const satisfies Partial<Remedy>;

export const UNIT_REPAIR_STEPS: readonly string[] = [
  'Write down what is stored: rear on or off, level, bass. An exchange unit comes as it left the factory.',
  'Have the head unit repaired or exchanged, and the same settings put back in.',
];
