import { CORNERS, type Corner } from '../../rig/corner.ts';
import { type Amp, isJoined, type World } from '../state.ts';
import { anyAmp } from './any-amp.ts';
import type { Harm } from './harm.ts';

const waitsForNoWire = ({ turnOn, remoteSource }: Amp): boolean => turnOn === 'wire' && remoteSource === 'none';

const wiresOnGround = ({ unit, runs }: World): readonly Corner[] =>
  CORNERS.filter((corner) => isJoined(unit.toGround[corner]) || isJoined(runs[corner].toFrame));
const isLiveOnFrame = ({ leadToFrame, fuseOpen }: Amp): boolean => isJoined(leadToFrame) && !fuseOpen;

/** What is switched off that the bike needs, and volts where none should be. */
export const SWITCH_HARMS: readonly Harm[] = [
  {
    id: 'rear-switched-off',
    says: 'Rear channels that were on are off.',
    does: (before, after) => before.unit.rearOn && !after.unit.rearOn,
  },
  {
    id: 'never-wakes',
    says: 'The turn-on selector waits for a wire that is not fitted: nothing wakes the amplifier any more.',
    does: anyAmp((before, after) => waitsForNoWire(after) && !waitsForNoWire(before)),
  },
  {
    id: 'output-on-ground',
    says: 'A wire of a bridge output is joined to ground: half the supply is shorted there.',
    does: (before, after) => wiresOnGround(after).some((corner) => !wiresOnGround(before).includes(corner)),
  },
  {
    id: 'lead-live-on-frame',
    says: 'The positive lead lies on the frame behind a fuse that holds.',
    does: anyAmp((before, after) => isLiveOnFrame(after) && !isLiveOnFrame(before)),
  },
  {
    id: 'remote-always-live',
    says: 'The remote wire is live with the key off, and the amplifier empties the battery.',
    does: anyAmp((before, after) => after.remoteSource === 'permanent' && before.remoteSource !== 'permanent'),
  },
];
