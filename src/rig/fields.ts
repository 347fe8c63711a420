import type { AnyUnit } from '../compute/units.ts';

/** A number somebody may know about a bike, in SI units. */
export interface NumberField {
  readonly kind: 'number';
  readonly label: string;
  /** What the form shows beside the number. */
  readonly unit: AnyUnit;
  /** Multiply by this to get from what is typed to SI (a wire's section is typed in mm²). */
  readonly siPerTyped: number;
  /** The value of the typical build, used when nobody knows. */
  readonly typical: number;
  /** What builds are found to have: the band when the value is assumed. */
  readonly usual: readonly [low: number, high: number];
  /** What the form accepts. Outside it the value is a mistake. */
  readonly allowed: readonly [low: number, high: number];
  /** Where it stands on the bike. That of the bike's own fields is with the form: no other page loads it. */
  readonly help?: string;
  /** Parts of one make no sense. */
  readonly whole?: true;
}

/** One of a few named answers. */
export interface ChoiceField {
  readonly kind: 'choice';
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  readonly typical: string;
  readonly help?: string;
}

export type Field = NumberField | ChoiceField;

export const number = (
  label: string,
  unit: AnyUnit,
  typical: number,
  usual: readonly [number, number],
  allowed: readonly [number, number],
  help?: string,
  siPerTyped = 1,
): NumberField => ({ kind: 'number', label, unit, siPerTyped, typical, usual, allowed, ...(help && { help }) });

/** A number of things. */
export const count = (...field: Parameters<typeof number>): NumberField => ({ ...number(...field), whole: true });

export const choice = <const O extends Record<string, string>>(
  label: string,
  options: O,
  typical: Extract<keyof O, string>,
  help?: string,
) => ({ kind: 'choice', label, options, typical, ...(help && { help }) }) as const satisfies ChoiceField;

const MM2 = 1e-6;

/**
 * Everything about a bike that is not an amplifier. Typical values are those of a common build, from memory of the
 * trade with no published source, unless a comment names one.
 */
export const BIKE_FIELDS = {
  unitKind: choice(
    'Head unit',
    { factory: 'The one the bike was built with', replaced: 'Replaced by another one' },
    'factory',
  ),
  deliveredWith: choice(
    'The bike left the factory with',
    { two: 'Front speakers only', four: 'Front and rear speakers' },
    'two',
  ),
  deliveredAmp: choice('Amplifier from new', { no: 'None', yes: 'Yes, the bike maker’s own' }, 'no'),
  supplyRunningV: number('Supply, engine running', 'V', 14.2, [13.5, 14.6], [12, 15.5]),
  supplyOffV: number('Supply, engine off', 'V', 12.6, [12.2, 12.9], [11, 13.6]),
  loweredByDb: number('An amplified profile is lower by', 'dB', 7, [6, 8], [3, 15]),
  boostDb: number('Bass boost of the unaltered profile', 'dB', 13, [12, 14], [6, 18]),
  frontRatedOhm: number('Front speakers, rated', 'Ω', 4, [2, 4], [1, 16]),
  frontFedBy: choice('Front speakers are driven by', { unit: 'The head unit', amp: 'An amplifier' }, 'unit'),
  rearFitted: choice('Rear speakers', { yes: 'Fitted', no: 'None' }, 'yes'),
  rearFedBy: choice('Rear speakers are driven by', { unit: 'The head unit', amp: 'An amplifier' }, 'unit'),
  rearPlug: choice('Plug at the lid or case', { yes: 'There is one', no: 'None, the lead runs through' }, 'yes'),
  rearRatedOhm: number('Rear speakers, rated', 'Ω', 4, [2, 4], [1, 16]),
  rearPerChannel: count('Rear speakers on one channel', 'speaker', 1, [1, 2], [1, 4]),
  rearWiring: choice(
    'Several on one channel are wired',
    { single: 'There is only one', parallel: 'In parallel', series: 'In series' },
    'single',
  ),
  rearRunM: number('Rear speaker run, one way', 'm', 2.2, [1.5, 3.5], [0.2, 8]),
  rearRunM2: number(
    'Rear speaker run, wire section',
    'mm²',
    2.08 * MM2,
    [0.82 * MM2, 2.5 * MM2],
    [0.2 * MM2, 10 * MM2],
    undefined,
    MM2,
  ),
  batteryKind: choice('Kind of battery', { lead: 'Lead-acid: acid, AGM or gel', lithium: 'Lithium' }, 'lead'),
  batteryAh: number('Battery capacity', 'Ah', 28, [18, 32], [4, 100]),
  chargingIdleA: number('Charging current at idle', 'A', 22, [15, 30], [2, 80]),
  chargingCruiseA: number('Charging current at 3000 rpm', 'A', 48, [35, 60], [5, 120]),
} as const satisfies Record<string, Field>;

/** Everything about one amplifier. */
export const AMP_FIELDS = {
  kind: choice('Kind', { 'add-on': 'Added later', factory: "The bike maker's own, on the data bus" }, 'add-on'),
  drives: choice(
    'It drives',
    { front: 'The front speakers', rear: 'The rear speakers', both: 'Front and rear' },
    'both',
  ),
  fedFrom: choice(
    'Its inputs come from',
    { own: "The head unit's front and rear pairs", front: 'The front pair only' },
    'own',
  ),
  input: choice(
    'Signal into it',
    { speaker: "The head unit's speaker wires", line: 'Line level, through a converter or a line output' },
    'speaker',
  ),
  turnOn: choice(
    'It is switched on by',
    { wire: 'A remote wire', signal: 'Hearing a signal', dc: 'Sensing DC on its inputs' },
    'wire',
  ),
  needs: choice('It was made for', { any: 'Any source', unaltered: "The head unit's unaltered output only" }, 'any'),
  channels: count('Channels', 'channel', 2, [2, 4], [1, 8]),
  powerW: number('Sine power of one channel', 'W', 90, [40, 150], [5, 1000]),
  ratedOhm: number('Rated load of one channel', 'Ω', 4, [2, 4], [1, 8]),
  plusLeadM: number('Positive lead, length', 'm', 1.6, [0.8, 3], [0.1, 10]),
  plusLeadM2: number(
    'Positive lead, wire section',
    'mm²',
    8.37 * MM2,
    [5.26 * MM2, 13.3 * MM2],
    [0.5 * MM2, 60 * MM2],
    undefined,
    MM2,
  ),
  mainFuseA: number('Main fuse', 'A', 40, [20, 60], [1, 200]),
} as const satisfies Record<string, Field>;

export type BikeFieldId = keyof typeof BIKE_FIELDS;
export type AmpFieldId = keyof typeof AMP_FIELDS;

type ValueOf<F> = F extends NumberField ? number : F extends { options: infer O } ? Extract<keyof O, string> : never;
type ValuesOf<T> = { readonly [K in keyof T]: ValueOf<T[K]> };

/** A value for every field: what a build has. */
export type BikeValues = ValuesOf<typeof BIKE_FIELDS>;
export type AmpValues = ValuesOf<typeof AMP_FIELDS>;
