import { cutOutA, UNDERVOLTAGE_CUT_HIGHEST_V, UNDERVOLTAGE_CUT_LOWEST_V } from '../compute/amp-supply.ts';
import { lampA } from '../compute/lamp.ts';
import { formatQuantity } from '../compute/quantity.ts';
import type { Findings } from '../steps/outcome.ts';
import { batteryV, LAMP_A } from '../steps/supply/amp-feed.ts';
import { type Drop, healthyDropV as healthyV } from '../steps/supply/drops.ts';
import type { CheckNeeds } from './cause.ts';
import type { Figure } from './figure.ts';

/** The way to the amplifier and the way back: what sound ones lose, and what was read of these. */

export type Way = 'plus' | 'ground';
const PATHS = { plus: 'positive path', ground: 'ground path' } as const;
const READING = { plus: 'plusDropV', ground: 'groundDropV' } as const satisfies Record<Way, Drop>;
const READ = 'supply-under-load';

/** The most that a sound way loses with the lamp on. */
export const healthyDropV = (f: Findings, way: Way): number => healthyV(READING[way], f);

/** “below 0.069 V” */
export const healthyInWords = (f: Findings, way: Way): string =>
  `below ${formatQuantity(healthyDropV(f, way), 'V', 2)}`;

export const CUT_OUT: Figure = {
  id: 'cut-out',
  label: 'It cuts out below, at its own terminals',
  value: [UNDERVOLTAGE_CUT_LOWEST_V, UNDERVOLTAGE_CUT_HIGHEST_V],
  unit: 'V',
};

export const healthyFigure = (f: Findings, way: Way): Figure => ({
  id: `${way}-drop-healthy`,
  label: `Lost on the ${PATHS[way]} with a 55 W lamp, healthy`,
  value: healthyDropV(f, way),
  unit: 'V',
  limit: 'below',
});

/** A bulb that takes `LAMP_A` is rated for 12 V, and dark at a tenth of it: what it draws then says nothing. */
const LAMP_RATED_V = 12;
const LAMP_DARK_V = LAMP_RATED_V / 10;

/** What the lamp really drew at the volts that were left on it; undefined where they were not read, or it was dark. */
export function lampDrewA(f: Findings): number | undefined {
  const { ampV } = f.values(READ);
  if (ampV === undefined || ampV < LAMP_DARK_V) return undefined;
  return lampA({ lampV: ampV, ratedV: LAMP_RATED_V, ratedA: LAMP_A });
}

/** What a way was read to lose, the resistance that it has, and the current at which that cuts the amplifier off. */
export function readFigures(f: Findings, way: Way): readonly Figure[] {
  const lostV = f.values(READ)[READING[way]];
  if (lostV === undefined || lostV <= 0) return [];
  const read: Figure = {
    id: `${way}-drop-read`,
    label: `Lost on the ${PATHS[way]} with the lamp, as read`,
    value: lostV,
    unit: 'V',
    digits: 3,
  };
  const currentA = lampDrewA(f);
  return currentA === undefined ? [read] : [read, ...resistanceFigures(f, way, lostV / currentA)];
}

function resistanceFigures(f: Findings, way: Way, resistanceOhm: number): readonly Figure[] {
  const supplyV = f.values(READ)['batteryV'] ?? batteryV(f);
  const found: Figure = {
    id: `${way}-resistance`,
    label: 'So its resistance is about',
    value: resistanceOhm,
    unit: 'Ω',
  };
  if (supplyV <= UNDERVOLTAGE_CUT_HIGHEST_V) return [found];
  const fromA = cutOutA({ supplyV, cutV: UNDERVOLTAGE_CUT_HIGHEST_V, resistanceOhm });
  return [found, { id: `${way}-cuts-out-from`, label: 'It may cut out at a current of', value: fromA, unit: 'A' }];
}

/** The load for a reading, and how it goes on: its clips sit on a terminal that is always live. */
export const LAMP_ON =
  'Key off, main fuse and line-level plugs out, a 55 W lamp clipped to the amplifier’s positive and ground, fuse back in';
export const LAMP_NEEDS = {
  needs: ['line-leads-out', 'lamp-on'],
  touches: ['amp-plus'],
} as const satisfies CheckNeeds;

export const TEN_STARTS = 'The amplifier starts and stops with the head unit ten times in a row.';
export const TEN_LOUD =
  'Ten minutes at the volume where it failed: it stays on, and no lead or holder gets more than hand-warm.';
/** How a positive lead goes back on. */
export const MINUS_BACK =
  'Battery negative on, main fuse last. A small spark as its capacitors charge is normal: not near a battery that has just been charged.';
