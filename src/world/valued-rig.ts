import type { Axle, Corner } from '../rig/corner.ts';
import { axleOf } from '../rig/corner.ts';
import { AMP_FIELDS, type AmpValues, BIKE_FIELDS, type BikeValues, type Field } from '../rig/fields.ts';
import type { Rig } from '../rig/rig.ts';

/** A rig in which every value is there: what a bike has, whether or not somebody knows it. */
export type ValuedRig = BikeValues & { readonly amps: readonly AmpValues[] };

const typicalOf = (fields: Readonly<Record<string, Field>>) =>
  Object.fromEntries(Object.entries(fields).map(([id, { typical }]) => [id, typical]));
const TYPICAL_AMP = typicalOf(AMP_FIELDS) as AmpValues;
const TYPICAL_BIKE = typicalOf(BIKE_FIELDS) as BikeValues;

/**
 * The rig with the typical value wherever nothing is known. A pair that is said to be driven by an amplifier, of which
 * the list has none, gets one; one that is said to be driven by the unit has no wire to any.
 */
export function valuedRig(rig: Rig): ValuedRig {
  const { name: _, profileRead: __, amps: known = [], ...bike } = rig;
  const values: BikeValues = { ...TYPICAL_BIKE, ...bike };
  const single = values.rearPerChannel === 1;
  const rearWiring = single ? 'single' : values.rearWiring === 'single' ? 'parallel' : values.rearWiring;
  const amps = known.map((amp) => ({ ...TYPICAL_AMP, ...amp }));
  for (const axle of ['front', 'rear'] as const) {
    const byAmp =
      axle === 'front' ? values.frontFedBy === 'amp' : values.rearFitted === 'yes' && values.rearFedBy === 'amp';
    if (byAmp && !amps.some((amp) => amp.drives === axle || amp.drives === 'both')) {
      amps.push({ ...TYPICAL_AMP, drives: axle });
    }
  }
  return { ...values, rearWiring, rearPerChannel: Math.round(values.rearPerChannel), amps };
}

export const isFitted = (rig: ValuedRig, corner: Corner): boolean =>
  axleOf(corner) === 'front' || rig.rearFitted === 'yes';

/** What drives a corner: the unit, or the amplifier with this number in the list. */
export function driverOf(rig: ValuedRig, corner: Corner): 'unit' | number {
  const axle: Axle = axleOf(corner);
  if ((axle === 'front' ? rig.frontFedBy : rig.rearFedBy) === 'unit') return 'unit';
  return rig.amps.findIndex((amp) => amp.drives === axle || amp.drives === 'both');
}

/** Whether any corner hangs on an amplifier. */
export const isAmplified = (rig: ValuedRig): boolean => driversInUse(rig).length > 0;

/** The amplifiers that drive a corner, by number. Others in the list are not wired to anything. */
export const driversInUse = (rig: ValuedRig): readonly number[] => [
  ...new Set(
    (['front-left', 'rear-left'] as const)
      .filter((corner) => isFitted(rig, corner))
      .map((corner) => driverOf(rig, corner))
      .filter((driver) => driver !== 'unit'),
  ),
];

/** The amplifier that is meant by "the amplifier": that of the rear, or else the first that drives anything. */
export function mainAmp(rig: ValuedRig): number | null {
  const rear = rig.rearFitted === 'yes' ? driverOf(rig, 'rear-left') : 'unit';
  return rear === 'unit' ? (driversInUse(rig)[0] ?? null) : rear;
}
