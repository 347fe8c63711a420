import { cleanOffV } from '../../steps/profile/tones.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { frontV, prepared } from '../tones.ts';
import { stepsFrom } from '../volume.ts';

const LAST_STEP = 1;

/** Below this share of its clean output no head unit clips, so the climb begins here. */
const CLEAN_SHARE = 0.4;

/** Step by step up, until one adds less than the one before, and one back. Null where the scale ends at once. */
function climbed(volumes: readonly number[], readV: (volumeRatio: number) => number): number | null {
  let [lastV, addedV]: [number | null, number] = [null, 0];
  for (const volumeRatio of volumes) {
    const volts = readV(volumeRatio);
    if (lastV !== null && volts - lastV < addedV) return lastV;
    addedV = lastV === null ? 0 : volts - lastV;
    lastV = volts;
  }
  return lastV;
}

export const sayTopStep: Say = (asked) => {
  const bike = prepared(asked.bike);
  const at80V = (volumeRatio: number) => frontV(asked, bike, { toneHz: 80, volumeRatio, apart: ['amp-outputs'] });
  const topV = climbed(stepsFrom(CLEAN_SHARE * cleanOffV(asked.situation).lowV, at80V), at80V) ?? at80V(LAST_STEP);
  return topV > 0 ? { readings: { topV: hold(asked.observer).typed('ac', topV) } } : CANNOT;
};
