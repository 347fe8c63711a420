import { AC_DIGITS, AC_OF_READING_RATIO } from '../compute/meter.ts';

/** A meter as its owner bought it. Values without a source are from memory: common practice, no published source. */
export interface Meter {
  readonly acDigitV: number;
  readonly dcDigitV: number;
  readonly ohmDigitOhm: number;
  readonly ampDigitA: number;
  /** The tones it reads right. Outside them it reads low. */
  readonly bandHz: readonly [low: number, high: number];
  readonly leadsOhm: number;
}

/** A cheap one: 0.1 V on its lowest AC range, specified from 40 to 400 Hz. */
export const BASIC_METER: Meter = {
  acDigitV: 0.1,
  dcDigitV: 0.01,
  ohmDigitOhm: 0.1,
  ampDigitA: 0.01,
  bandHz: [40, 400],
  leadsOhm: 0.3,
};
export const GOOD_METER: Meter = { ...BASIC_METER, acDigitV: 0.001, dcDigitV: 0.001, ampDigitA: 0.001 };

const DC_OF_READING_RATIO = 0.005;
const DC_DIGITS = 2;
const OHM_OF_READING_RATIO = 0.008;
const AMP_OF_READING_RATIO = 0.02;
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

const round = (value: number, digit: number) => (Number.isFinite(value) ? Math.round(value / digit) * digit : value);

export type Kind = 'dc' | 'ac' | 'ohm' | 'amp';
const STATEMENT: Readonly<Record<Kind, readonly [ofReading: number, digits: number, digit: keyof Meter]>> = {
  dc: [DC_OF_READING_RATIO, DC_DIGITS, 'dcDigitV'],
  ac: [AC_OF_READING_RATIO, AC_DIGITS, 'acDigitV'],
  ohm: [OHM_OF_READING_RATIO, DC_DIGITS, 'ohmDigitOhm'],
  amp: [AMP_OF_READING_RATIO, DC_DIGITS, 'ampDigitA'],
};

/**
 * What a meter shows of a value. `luck` from −1 to 1 says where within its statement of accuracy this one lies; 0 is a
 * meter that is right but for its last digit.
 */
export function shown(meter: Meter, kind: Kind, value: number, luck: number): number {
  const [ofReading, digits, digitOf] = STATEMENT[kind];
  const digit = meter[digitOf] as number;
  if (kind === 'ohm' && value > OVER_OHM) return Infinity;
  const off = luck * (ofReading * Math.abs(value) + digits * digit);
  const reads = round(value + off, digit);
  return kind === 'dc' ? reads : Math.max(0, reads);
}
