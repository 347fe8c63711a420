import { ampLight, ampSwitches, contactsLook } from '../../steps/by-ear.ts';
import { gainIsLowest, contactsLook as looks, wrongSelectors } from '../../world/sights.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { heardCorners } from '../../world/symptoms/symptom.ts';
import { ampOf, cornersOfAmp, lampOf, REAR } from './bike.ts';
import { whenToLook, whileOff } from './left.ts';
import { CANNOT, happens, option, type Says } from './observer.ts';

/* What eyes tell. */

/** How often the lamp is told as it was when the amplifier failed, and not as it is now. An estimate. */
const TELLS_OF_THEN_SHARE = 0.5;
const ampPlays = (bike: Ridden): boolean => {
  const heard = heardCorners(bike, bike.at({}));
  return cornersOfAmp(bike).some((corner) => heard.includes(corner));
};

export const BY_EYE: Says = {
  [contactsLook.id]: ({ found }) => {
    if (found.world.rig.rearFitted === 'no') return CANNOT;
    const sides = REAR.map((corner) => looks(found.world, corner));
    return option((['apart', 'film'] as const).find((look) => sides.includes(look)) ?? 'clean');
  },
  [ampLight.id]: ({ bike, situation, observer }) => {
    if (ampOf(bike) === null) return CANNOT;
    const now = lampOf(bike, whenToLook(bike));
    const then = lampOf(bike, whileOff(bike, situation));
    // Who came because it goes off at times may tell what it showed then.
    const tellsOfThen = now === 'normal' && then === 'fault' && ampPlays(bike);
    return option(tellsOfThen && happens(observer, TELLS_OF_THEN_SHARE) ? then : now);
  },
  [ampSwitches.id]: ({ bike }) => {
    const i = ampOf(bike);
    if (i === null) return CANNOT;
    const wrong = wrongSelectors(bike.world, i);
    if (wrong.includes('turn-on')) return option('turn-on');
    if (wrong.includes('mode')) return option('mode');
    return option(wrong.includes('range') || gainIsLowest(bike.world, i) ? 'range' : 'right');
  },
};
