import { lampA } from '../../compute/lamp.ts';
import { type Corner, cornersOf } from '../../rig/corner.ts';
import { axleOfConcern, cornersOfAmp, REAR } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { lowestToFrame, runOf } from '../ohms.ts';

/** A 1.5 V cell, what it loses inside, and a bulb for it. From memory. */
const CELL = { openV: 1.5, internalOhm: 0.3 };
const BULB = { ratedV: 1.5, ratedA: 0.3 };

/** Light goes with about the 3.4th power of the volts: at this share of them a bulb hardly glows. */
const GLOWS_RATIO = 0.3;
/** At this share a bulb has more than half its light, and looks as bright as end on end. An estimate. */
const BRIGHT_RATIO = 0.85;

/** Volts of the bulb with so many ohms in its circuit: found by halving, since more volts always draw more. */
function bulbV(ohm: number): number {
  let [low, high] = [0, CELL.openV];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (middle + lampA({ ...BULB, lampV: middle }) * (CELL.internalOhm + ohm) > CELL.openV) high = middle;
    else low = middle;
  }
  return low;
}

/** How much of end on end is left of the bulb's volts through so many ohms. */
export const bulbRatio = (ohm: number): number => bulbV(ohm) / bulbV(0);

export const sayBulbToFrame: Say = ({ found, bike }) => {
  const looked: readonly Corner[] = [...cornersOf(axleOfConcern(found)), ...REAR, ...cornersOfAmp(bike)];
  const corners = bike.fitted.filter((corner) => looked.includes(corner));
  const toFrameOhm = lowestToFrame(bike, corners);
  if (toFrameOhm === null) return CANNOT;
  if (bulbRatio(toFrameOhm) >= GLOWS_RATIO) return option('to-frame');
  const across = corners.some((corner) => bulbRatio(runOf(bike, corner) ?? Infinity) >= BRIGHT_RATIO);
  return option(across ? 'across' : 'clear');
};
