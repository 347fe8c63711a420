import type { Band, Reading, Values } from '../step.ts';

/** A run that reads ten times its rated ohms is open. Common practice, no published source. */
export const OPEN_RATIO = 10;

/** Makers differ: published speakers of 2 Ω read down to 1.2. Below this share of the usual least the coil is shorted. */
export const SHORTED_RATIO = 0.85;

export const ohmReading = (label: string): Reading => ({
  label,
  unit: 'Ω',
  possible: [0, Infinity],
  impossible: 'Ohms cannot be below zero. Is the key off, the plug apart and the meter on ohms?',
});

export const LEADS_OHM = {
  label: 'Probes held together',
  unit: 'Ω',
  probes: 'not drawn',
  possible: [0, 5],
  impossible: 'Two probes held together read 0.1 to 0.5 ohm. More than 5: clean the tips or change the leads.',
} as const satisfies Reading;

export const lessLeads = (values: Values, reading: string) =>
  Math.max(0, (values[reading] ?? Infinity) - (values['leadsOhm'] ?? 0));

export const withLeads = (bands: readonly Band[], leadsOhm: number): readonly Band[] =>
  bands.map((band) => ({ ...band, low: band.low === 0 ? 0 : band.low + leadsOhm, high: band.high + leadsOhm }));
