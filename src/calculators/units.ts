import type { UnitRow } from '../compute/units.ts';

/* Units that only calculators ask for. */

const plain = { spellings: [], prefixes: [''], written: [['', 0]] } as const satisfies Partial<UnitRow>;

export const MILLIAMPERE: UnitRow = {
  ...plain,
  symbol: 'mA',
  plural: 'milliamperes',
  singular: 'milliampere',
  spellings: ['milliamp', 'milliamps'],
  others: { a: 1000, amp: 1000, amps: 1000, ampere: 1000, amperes: 1000, µa: 1e-3, ua: 1e-3 },
  largest: 1e6,
  example: '15 mA',
};
/** Sizes of speakers are printed in millimetres or inches; an inch is 25.4 mm exactly (1959). */
export const MILLIMETRE: UnitRow = {
  ...plain,
  symbol: 'mm',
  plural: 'millimetres',
  singular: 'millimetre',
  spellings: ['millimeter', 'millimeters'],
  others: { cm: 10, m: 1000, in: 25.4, inch: 25.4, inches: 25.4, '"': 25.4, '”': 25.4 },
  largest: 1e5,
  example: '130 mm',
};
export const MINUTE: UnitRow = {
  ...plain,
  symbol: 'min',
  plural: 'minutes',
  singular: 'minute',
  spellings: ['mins'],
  others: { h: 60, hr: 60, hrs: 60, hour: 60, hours: 60, s: 1 / 60 },
  largest: 1e5,
  example: '20 min',
};
export const DAY: UnitRow = {
  ...plain,
  symbol: 'days',
  plural: 'days',
  singular: 'day',
  spellings: ['d'],
  others: { h: 1 / 24, hours: 1 / 24, week: 7, weeks: 7, month: 30, months: 30 },
  largest: 1e4,
  example: '21 days',
};
/** A mile is 1.609344 km exactly (1959). */
export const KM_PER_HOUR: UnitRow = {
  ...plain,
  symbol: 'km/h',
  plural: 'kilometres an hour',
  singular: 'kilometre an hour',
  spellings: ['kmh', 'kph', 'km'],
  others: { mph: 1.609344, mi: 1.609344, miles: 1.609344, 'm/s': 3.6 },
  largest: 1000,
  example: '100 km/h',
};
export const RPM: UnitRow = {
  ...plain,
  symbol: 'rpm',
  plural: 'revolutions a minute',
  singular: 'revolution a minute',
  spellings: ['r/min', 'rev', 'revs'],
  largest: 1e5,
  example: '3000 rpm',
};
/** A count or a ratio: a number without a unit. */
export const PLAIN: UnitRow = {
  ...plain,
  symbol: '',
  plural: 'plain numbers',
  singular: 'plain number',
  largest: 1000,
  example: '8',
};
