import { gainTargetV } from '../../compute/gain.ts';
import { powerW } from '../../compute/level.ts';
import { cornersOfAmp } from '../bike.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How often no label can be read. An estimate. */
const UNREADABLE_SHARE = 0.2;
/** Less than this of what it is given is clearly less. An estimate. */
const CLEARLY_RATIO = 0.75;

export const saySpeakerPapers: Say = ofItsAmp((i, _, { bike, observer }) => {
  if (happens(observer, UNREADABLE_SHARE)) return CANNOT;
  const made = bike.world.rig.amps[i];
  if (!made) return CANNOT;
  const over = cornersOfAmp(bike).some((corner) => {
    const { coilOhm, ratedW } = bike.world.speakers[corner];
    const outputV = gainTargetV({ powerW: made.powerW, loadOhm: made.ratedOhm });
    return ratedW < CLEARLY_RATIO * powerW({ levelV: outputV, loadOhm: coilOhm });
  });
  return option(over ? 'over' : 'within');
});
