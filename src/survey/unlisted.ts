import { CORNERS, type Corner, sideOf } from '../rig/corner.ts';
import { always, type Fault, hasAmp, hasRear, REAR, withAmp, withSpeakers } from '../world/faults/kit.ts';
import type { Speaker } from '../world/state.ts';

const silenced = (gives: Speaker['gives']): Fault => ({
  id: 'unlisted',
  variant: gives,
  title: 'Something that no reading shows',
  severity: null,
  weights: {},
  fits: always,
  apply: (world) => withSpeakers(world, REAR, { gives }),
});

/** The same of one speaker beside one that plays, on either side. */
const oneSilenced = (corner: Corner, gives: Speaker['gives']): Fault => ({
  ...silenced(gives),
  variant: `${corner} ${gives}`,
  side: sideOf(corner),
  fits: corner.startsWith('rear') ? hasRear : always,
  apply: (world) => withSpeakers(world, [corner], { gives }),
});

/** Its lamp stays dark, and all that can be read around it is sound. */
const staysOff: Fault = {
  id: 'unlisted',
  variant: 'stays off',
  title: 'An amplifier that stays off for a reason that no reading shows',
  severity: null,
  weights: {},
  fits: hasAmp,
  apply: (world) => withAmp(world, { alive: false }),
};

/**
 * Whatever nobody thought of: the rear is silent, or the amplifier is, and all that can be read is as on a sound bike. With
 * it among the causes being the only one left is not enough: something has to be seen that is not as it should be. What goes
 * wrong unseen may leave the hiss or take it.
 */
export const UNLISTED: readonly Fault[] = [
  silenced('hiss only'),
  silenced('nothing'),
  ...CORNERS.flatMap((corner) => [oneSilenced(corner, 'hiss only'), oneSilenced(corner, 'nothing')]),
  staysOff,
];
