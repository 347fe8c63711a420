import {
  AMP_FIELDS,
  type AmpValues,
  BIKE_FIELDS,
  type BikeFieldId,
  type BikeValues,
  type NumberField,
} from './fields.ts';

/** What is known of one amplifier. A field that is missing is not known. */
export type KnownAmp = { readonly [K in keyof AmpValues]?: AmpValues[K] };

/** An answer as it was given: an option, or readings as they were typed. */
export type SavedAnswer = { readonly option: string } | { readonly readings: Readonly<Record<string, string>> };

/**
 * What was read of the stored profile, as it was typed, and on which day. What it means, and how far it may be off, is
 * worked out anew each time.
 */
export interface ProfileReadings {
  /** A date, as `2026-05-03`. */
  readonly on: string;
  /** By step; the meter's smallest digit is one of them. */
  readonly answers: Readonly<Record<string, SavedAnswer>>;
}

/**
 * What is known of a bike. A field that is missing is not known: the typical build stands in and the bands widen.
 * `amps` missing means that nobody has said whether there is an amplifier; an empty list means there is none.
 */
export type Rig = { readonly [K in BikeFieldId]?: BikeValues[K] } & {
  readonly name?: string;
  readonly amps?: readonly KnownAmp[];
  readonly profileRead?: ProfileReadings;
};

export const NOTHING_KNOWN: Rig = {};

/** A number with the band that it lies in. Known values have no width of their own. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly assumed: boolean;
}

type NumberFieldId = { [K in BikeFieldId]: BikeValues[K] extends number ? K : never }[BikeFieldId];
type AmpNumberFieldId = { [K in keyof AmpValues]: AmpValues[K] extends number ? K : never }[keyof AmpValues];
type ChoiceFieldId = Exclude<BikeFieldId, NumberFieldId>;

const estimateOf = (field: NumberField, known: number | undefined): Estimate =>
  known === undefined
    ? { value: field.typical, low: field.usual[0], high: field.usual[1], assumed: true }
    : { value: known, low: known, high: known, assumed: false };

/** The number of a field: what is known, or the typical value with its usual range. */
export const estimate = (rig: Rig, field: NumberFieldId): Estimate => estimateOf(BIKE_FIELDS[field], rig[field]);

/** The same for a field of an amplifier. */
export const ampEstimate = (amp: KnownAmp, field: AmpNumberFieldId): Estimate =>
  estimateOf(AMP_FIELDS[field], amp[field]);

/** The choice of a field: what is known, or that of the typical build. */
export const chosen = <F extends ChoiceFieldId>(rig: Rig, field: F): BikeValues[F] =>
  (rig[field] ?? BIKE_FIELDS[field].typical) as BikeValues[F];

/** The amplifier that drives the rear speakers, or the front ones. */
export const ampDriving = (rig: Rig, pair: 'front' | 'rear'): KnownAmp | undefined =>
  rig.amps?.find((amp) => amp.drives === pair || amp.drives === 'both');

/** The rig with some fields not known any more. */
export function without<K extends keyof Rig>(rig: Rig, ...forgotten: readonly K[]): Rig {
  return Object.fromEntries(Object.entries(rig).filter(([field]) => !forgotten.includes(field as K)));
}

/** Adds what has been learnt. A later word wins over an earlier one. */
export const withKnown = (rig: Rig, learnt: Rig): Rig => ({ ...rig, ...learnt });

/**
 * The rig with something learnt about the amplifier that drives a pair. When none in the list is known to drive it, it
 * is the first of which nobody knows what it drives, and otherwise one more.
 */
export function withAmpKnown(rig: Rig, pair: 'front' | 'rear', learnt: KnownAmp): Rig {
  const amps = rig.amps ?? [];
  const known = ampDriving(rig, pair) ?? amps.find((amp) => amp.drives === undefined);
  const next: KnownAmp = { drives: pair, ...known, ...learnt };
  return { ...rig, amps: known ? amps.with(amps.indexOf(known), next) : [...amps, next] };
}
