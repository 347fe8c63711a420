import { leftAndRight } from '../left-and-right.ts';
import { axleAsked, type Say } from '../observer.ts';
import { FRONT, UNIT_REAR } from '../one-volume-step.ts';

export const sayUnitSides: Say = (asked) =>
  axleAsked(asked) === 'rear'
    ? asked.bike.world.rig.rearFitted === 'no'
      ? { cannot: true }
      : leftAndRight(asked, UNIT_REAR, { toneHz: 400, apart: ['runs'] })
    : leftAndRight(asked, FRONT, { toneHz: 400, apart: ['amp-outputs'] });
