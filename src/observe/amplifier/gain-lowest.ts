import { driverOf } from '../../world/valued-rig.ts';
import { having } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';
import { uglyAt } from '../ugly.ts';

/** A knob spans some 26 dB. From memory. */
const LOWEST_RATIO = 0.05;

/** Only what is ugly and hangs on it can come clean by its knob. */
export const sayGainLowest: Say = ofItsAmp((i, { gainRatio: { front, rear } }, { bike }) => {
  const onIt = uglyAt(bike).filter((corner) => driverOf(bike.world.rig, corner) === i);
  if (onIt.length === 0) return CANNOT;
  const low = having(bike, 'gain at its lowest', {
    gainRatio: { front: LOWEST_RATIO * front, rear: LOWEST_RATIO * rear },
  });
  return option(uglyAt(bike, low).some((corner) => onIt.includes(corner)) ? 'harsh' : 'clean');
});
