import { AC_DIGITS, AC_OF_READING_RATIO } from '../compute/meter.ts';

export type Kind = 'dc' | 'ac' | 'ohm' | 'amp';
/** How far a reading may be off: so much of itself, and so many of its last digits. */
type Statement = readonly [ofReadingRatio: number, digits: number];

/** A meter as its owner bought it. Values without a source are from memory: common practice, no published source. */
export interface Meter {
  /** The last digit of its lowest ranges. */
  readonly acDigitV: number;
  readonly dcDigitV: number;
  readonly ohmDigitOhm: number;
  readonly ampDigitA: number;
  /** How many of these digits a range holds: what is more goes to a range of ten times the digit. */
  readonly countsPerRange: number;
  readonly statement: Readonly<Record<Kind, Statement>>;
  /** The tones it reads right. Outside them it reads low. */
  readonly bandHz: readonly [low: number, high: number];
  readonly leadsOhm: number;
}

const STATEMENT: Meter['statement'] = {
  dc: [0.005, 2],
  ac: [AC_OF_READING_RATIO, AC_DIGITS],
  ohm: [0.008, 2],
  amp: [0.02, 2],
};

/** A cheap one: 0.1 V on its lowest AC range, specified from 40 to 400 Hz. */
export const BASIC_METER: Meter = {
  acDigitV: 0.1,
  dcDigitV: 0.01,
  ohmDigitOhm: 0.1,
  ampDigitA: 0.01,
  countsPerRange: 2000,
  statement: STATEMENT,
  bandHz: [40, 400],
  leadsOhm: 0.3,
};
export const GOOD_METER: Meter = {
  ...BASIC_METER,
  acDigitV: 0.001,
  dcDigitV: 0.001,
  ampDigitA: 0.001,
  countsPerRange: 6000,
};
/** One that no shop has: it shows the micro of everything and is never off. Its leads have ohms like any others. */
export const EXACT_METER: Meter = {
  ...BASIC_METER,
  acDigitV: 1e-6,
  dcDigitV: 1e-6,
  ohmDigitOhm: 1e-6,
  ampDigitA: 1e-6,
  countsPerRange: Infinity,
  statement: { dc: [0, 0], ac: [0, 0], ohm: [0, 0], amp: [0, 0] },
  bandHz: [0, Infinity],
};

/** Above this a meter shows OL. */
export const OVER_OHM = 10e6;

/**
 * What is left of a tone on a meter's AC range: inside its band nearly all of it, outside it falls off. Two poles at two
 * and a half times the upper limit and one at a tenth of the lower: 1.3 % low at 400 Hz and 3 dB at 1 kHz for a meter of
 * 40 to 400 Hz. The shape is an assumption; that the statement ends at 400 Hz is what such meters print.
 */
export function bandRatio({ bandHz: [lowHz, highHz] }: Meter, frequencyHz: number): number {
  const above = 1 / Math.sqrt(1 + (frequencyHz / (2.5 * highHz)) ** 4);
  const below = 1 / Math.hypot(1, lowHz / 10 / frequencyHz);
  return above * below;
}

const DIGIT = { dc: 'dcDigitV', ac: 'acDigitV', ohm: 'ohmDigitOhm', amp: 'ampDigitA' } as const;

/** The last digit that a meter shows of a value: that of the lowest range which holds it. */
export function digitAt(meter: Meter, kind: Kind, value: number): number {
  let digit: number = meter[DIGIT[kind]];
  while (Number.isFinite(value) && Math.abs(value) >= digit * meter.countsPerRange) digit *= 10;
  return digit;
}

/** Where within its statement a meter lies, each from −1 to 1. Of its own reading it is off by the same every time. */
export interface Luck {
  readonly ofReading: number;
  readonly digits: number;
}
export const NO_LUCK: Luck = { ofReading: 0, digits: 0 };

/** Up to this many digits a meter is off by less than its statement: with nothing at its input it shows nothing. */
const QUIET_DIGITS = 10;

/** What a meter shows of a value. */
export function shown(meter: Meter, kind: Kind, value: number, luck: Luck): number {
  if (kind === 'ohm' && value > OVER_OHM) return Infinity;
  const [ofReadingRatio, digits] = meter.statement[kind];
  const digit = digitAt(meter, kind, value);
  const share = Math.min(1, Math.abs(value) / (QUIET_DIGITS * digit));
  const offBy = luck.ofReading * ofReadingRatio * Math.abs(value) + luck.digits * share * digits * digit;
  const reads = Math.round((value + offBy) / digit) * digit;
  return kind === 'dc' ? reads : Math.max(0, reads);
}
