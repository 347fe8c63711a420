import { FUSE_CARRIES_RATIO } from '../../world/elements/fuse.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { having, lampOf } from '../bike.ts';
import { UNPLUGGED } from '../bulb-for-fuse.ts';
import { option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** What a fuse of the same rating does with everything unplugged, and then with the remote wire back. */
function newFuse(bike: Ridden, i: number): 'opens' | 'wakes' | 'fault' | 'holds' {
  const fitted = having(bike, 'new fuse', { fuseOpen: false });
  const { now } = fitted.at(UNPLUGGED);
  const ratedA = bike.world.rig.amps[i]?.mainFuseA ?? 0;
  if (!now.ok || now.power.currentA(`fuse ${i}`).re > FUSE_CARRIES_RATIO * ratedA) return 'opens';
  const lamp = lampOf(fitted, {});
  return lamp === 'normal' ? 'wakes' : lamp === 'fault' ? 'fault' : 'holds';
}

export const saySpareFuse: Say = ofItsAmp((i, _, { bike }) => option(newFuse(bike, i)));
