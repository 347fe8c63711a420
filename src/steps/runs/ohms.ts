import { coilBandOhm } from '../../compute/impedance.ts';
import type { Band, Reading, Values } from '../step.ts';

/** A run that reads ten times its rated ohms is open. Common practice, no published source. */
export const OPEN_RATIO = 10;

/** Makers differ: published speakers of 2 Ω read down to 1.2. Below this share of the usual least the coil is shorted. */
export const SHORTED_RATIO = 0.85;

/** Published speakers of 4 and 8 Ω read up to all of their rating. Above it a coil is hot, or something lies in its way. */
const MOST_RATIO = 1;

/** A good contact adds no more than this. Common practice, no published source. */
export const CONTACT_OK_OHM = 0.3;

/** What a coil of these rated ohms may read and pass, alone as at the end of its run. */
export const coilPassesOhm = (rated: { readonly low: number; readonly high: number }) => ({
  lowOhm: SHORTED_RATIO * coilBandOhm({ ratedOhm: rated.low }).lowOhm,
  highOhm: MOST_RATIO * rated.high + CONTACT_OK_OHM,
});

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

/** Two readings of the same thing may differ by so much: probes never touch twice alike. An estimate. */
const TOUCH_OHM = 0.5;

/** A refusal of what reads less than the leads that it was read through: one of the two was not held well. */
export function belowLeads(readings: readonly string[]) {
  return ({ leadsOhm = 0, ...values }: Values) => {
    const reading = readings.find((name) => (values[name] ?? Infinity) < leadsOhm - TOUCH_OHM);
    return reading === undefined
      ? null
      : {
          reading,
          message:
            'Nothing can read less than your probes held together. Clean the tips, press them together, and take all readings again.',
        };
  };
}

export const lessLeads = (values: Values, reading: string) =>
  Math.max(0, (values[reading] ?? Infinity) - (values['leadsOhm'] ?? 0));

export const withLeads = (bands: readonly Band[], leadsOhm: number): readonly Band[] =>
  bands.map((band) => ({ ...band, low: band.low === 0 ? 0 : band.low + leadsOhm, high: band.high + leadsOhm }));
