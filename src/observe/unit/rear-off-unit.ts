import { cornersOf } from '../../rig/corner.ts';
import { OPEN } from '../../world/healthy.ts';
import { driverOf } from '../../world/valued-rig.ts';
import { changed } from '../bike.ts';
import { axleHeard } from '../heard.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayRearOffUnit: Say = ({ bike }) => {
  const { rig } = bike.world;
  if (rig.rearFitted === 'no' || driverOf(rig, 'rear-left') !== 'unit') return CANNOT;
  const apart = changed(bike, 'rear off the unit', (world) => ({
    ...world,
    runs: {
      ...world.runs,
      ...Object.fromEntries(
        cornersOf('rear').map((corner) => {
          const run = world.runs[corner];
          return [corner, { ...run, dock: OPEN, toFrame: OPEN, acrossPair: OPEN }];
        }),
      ),
    },
  }));
  return option(axleHeard(apart, cornersOf('front')) && !axleHeard(bike, cornersOf('front')) ? 'plays' : 'no-change');
};
