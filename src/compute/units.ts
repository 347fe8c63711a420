/** What a reader can be asked for. Each is the unit a value is in, once prefixes are gone. */
export type Unit = 'V' | 'A' | 'Ω' | 'W' | 'Hz' | 'dB' | 'm' | 'mm²' | 'Ah' | '%' | 'speaker' | 'channel';

/** Prefix letter, or none, against the power of ten it stands for. */
export const PREFIXES = { '': 0, µ: -6, m: -3, c: -2, k: 3, M: 6 } as const;
export type Prefix = keyof typeof PREFIXES;

/** The same prefixes written out, for `millivolts`. */
export const PREFIX_WORDS: Readonly<Record<Prefix, string>> = {
  '': '',
  µ: 'micro',
  m: 'milli',
  c: 'centi',
  k: 'kilo',
  M: 'mega',
};

/** Everything that is known about a unit. One that only a few pages need is a row of its own, apart from `UNITS`. */
export type UnitRow = {
  /** How it is written, where that is not the key of the row. */
  readonly symbol?: string;
  /** How it is said: the plural, and the singular. */
  readonly plural: string;
  readonly singular: string;
  /** How people type it besides its symbol and its two names, in lower case. */
  readonly spellings: readonly string[];
  /** Prefixes that are read. */
  readonly prefixes: readonly Prefix[];
  /** Other units of the same quantity that are read, in lower case, each with its size in this one. */
  readonly others?: Readonly<Record<string, number>>;
  /** Prefixes that are written, each from this value of the unit upward, largest first. */
  readonly written: readonly (readonly [Prefix, number])[];
  /** More than this is a slip of the finger: no reading on a motorcycle comes near, and few meters show it. */
  readonly largest: number;
  readonly example: string;
  /** What the overload sign of a meter means here, where a meter shows one. */
  readonly overload?: 'open' | 'higher range';
  /** Whether AC or DC may stand behind it. */
  readonly kinds?: true;
  /** Whether `4.7k` does without the symbol. */
  readonly barePrefixes?: true;
};

/** Everything that is known about a unit, in one row. */
export const UNITS: Readonly<Record<Unit, UnitRow>> = {
  V: {
    plural: 'volts',
    singular: 'volt',
    spellings: [],
    prefixes: ['', 'm'],
    written: [
      ['', 0.01],
      ['m', 0],
    ],
    largest: 1000,
    example: '3.1 V',
    overload: 'higher range',
    kinds: true,
  },
  A: {
    plural: 'amperes',
    singular: 'ampere',
    spellings: ['amp', 'amps'],
    prefixes: ['', 'm', 'µ'],
    written: [
      ['', 0.1],
      ['m', 0],
    ],
    largest: 1000,
    example: '2.5 A',
    overload: 'higher range',
    kinds: true,
  },
  Ω: {
    plural: 'ohms',
    singular: 'ohm',
    spellings: ['r'],
    prefixes: ['', 'm', 'k', 'M'],
    written: [
      ['M', 1e6],
      ['k', 1e3],
      ['', 0.1],
      ['m', 0],
    ],
    largest: 1e8,
    example: '3.4 Ω',
    overload: 'open',
    barePrefixes: true,
  },
  W: {
    plural: 'watts',
    singular: 'watt',
    spellings: [],
    prefixes: ['', 'm', 'k'],
    written: [['', 0]],
    largest: 10_000,
    example: '18 W',
  },
  Hz: {
    plural: 'hertz',
    singular: 'hertz',
    spellings: [],
    prefixes: ['', 'k'],
    written: [['', 0]],
    largest: 1e6,
    example: '80 Hz',
    overload: 'higher range',
  },
  dB: {
    plural: 'decibels',
    singular: 'decibel',
    spellings: [],
    prefixes: [''],
    written: [['', 0]],
    largest: 200,
    example: '13 dB',
  },
  m: {
    plural: 'metres',
    singular: 'metre',
    spellings: ['meter', 'meters'],
    prefixes: ['', 'c', 'm'],
    written: [
      ['', 0.1],
      ['m', 0],
    ],
    largest: 100,
    example: '2.2 m',
  },
  'mm²': {
    plural: 'square millimetres',
    singular: 'square millimetre',
    spellings: ['mm2', 'mm^2', 'sqmm', 'sq mm', 'square millimeter', 'square millimeters'],
    prefixes: [''],
    written: [['', 0]],
    largest: 1000,
    example: '2.5 mm²',
  },
  Ah: {
    plural: 'ampere-hours',
    singular: 'ampere-hour',
    spellings: ['amp-hour', 'amp-hours', 'amp hours'],
    prefixes: ['', 'm'],
    written: [['', 0]],
    largest: 1000,
    example: '28 Ah',
  },
  '%': {
    plural: 'per cent',
    singular: 'per cent',
    spellings: ['percent', 'pct'],
    prefixes: [''],
    written: [['', 0]],
    largest: 1000,
    example: '75 %',
  },
  speaker: {
    plural: 'speakers',
    singular: 'speaker',
    spellings: [],
    prefixes: [''],
    written: [['', 0]],
    largest: 1000,
    example: '12',
  },
  channel: {
    plural: 'channels',
    singular: 'channel',
    spellings: [],
    prefixes: [''],
    written: [['', 0]],
    largest: 1000,
    example: '4',
  },
};

/** A unit by its name, or a row of its own. */
export type AnyUnit = Unit | UnitRow;

export const rowOf = (unit: AnyUnit): UnitRow => (typeof unit === 'string' ? UNITS[unit] : unit);
export const symbolOf = (unit: AnyUnit): string => (typeof unit === 'string' ? unit : (unit.symbol ?? unit.plural));
