import type { Reading } from '../step.ts';

export const MOST_V = 20;

export const dcReading = (label: string): Reading => ({
  label,
  unit: 'V',
  possible: [-0.5, MOST_V],
  impossible: 'A 12 V bike has no such voltage. Is the meter on DC volts?',
});
