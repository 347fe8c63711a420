import { FUSE_CARRIES_RATIO } from '../../world/elements/fuse.ts';
import { SOUND } from '../../world/healthy.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { having, lampOf } from '../bike.ts';
import { UNPLUGGED } from '../bulb-for-fuse.ts';
import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How often a bad holder grips the fuse that is pushed into it, for a while. An estimate. */
const GRIPS_AGAIN_SHARE = 1 / 3;

/** What a fuse of the same rating does with everything unplugged, and then with the remote wire back. */
function newFuse(bike: Ridden, i: number, grips: boolean): 'opens' | 'wakes' | 'fault' | 'holds' {
  const fitted = grips
    ? having(bike, 'new fuse, gripped', { fuseOpen: false, holder: SOUND })
    : having(bike, 'new fuse', { fuseOpen: false });
  const { now } = fitted.at(UNPLUGGED);
  const ratedA = bike.world.rig.amps[i]?.mainFuseA ?? 0;
  if (!now.ok || now.power.currentA(`fuse ${i}`).re > FUSE_CARRIES_RATIO * ratedA) return 'opens';
  const lamp = lampOf(fitted, {});
  return lamp === 'normal' ? 'wakes' : lamp === 'fault' ? 'fault' : 'holds';
}

export const saySpareFuse: Say = ofItsAmp((i, _, { bike, observer }) =>
  option(newFuse(bike, i, happens(observer, GRIPS_AGAIN_SHARE))),
);
