import { ampLight, ampSwitches, contactsLook } from '../../steps/by-ear.ts';
import { gainIsLowest, contactsLook as looks, wrongSelectors } from '../../world/sights.ts';
import { ampOf, lampOf, REAR } from './bike.ts';
import { whenToLook } from './left.ts';
import { CANNOT, option, type Says } from './observer.ts';

/* What eyes tell. */

export const BY_EYE: Says = {
  [contactsLook.id]: ({ found }) => {
    if (found.world.rig.rearFitted === 'no') return CANNOT;
    const sides = REAR.map((corner) => looks(found.world, corner));
    return option((['apart', 'film'] as const).find((look) => sides.includes(look)) ?? 'clean');
  },
  [ampLight.id]: ({ bike }) => (ampOf(bike) === null ? CANNOT : option(lampOf(bike, whenToLook(bike)))),
  [ampSwitches.id]: ({ bike }) => {
    const i = ampOf(bike);
    if (i === null) return CANNOT;
    const wrong = wrongSelectors(bike.world, i);
    if (wrong.includes('turn-on')) return option('turn-on');
    if (wrong.includes('mode')) return option('mode');
    return option(wrong.includes('range') || gainIsLowest(bike.world, i) ? 'range' : 'right');
  },
};
