import { CORNERS, type Corner, sideOf } from '../rig/corner.ts';
import { always, type Fault, hasAmp, hasRear, REAR, withAmp, withSpeakers, withUnit } from '../world/faults/kit.ts';
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

/** It plays rough, and all that can be read and tried is as on a sound bike. */
const playsRough: Fault = {
  id: 'unlisted',
  variant: 'plays rough',
  title: 'Speakers that play rough for a reason that no reading shows',
  severity: null,
  weights: {},
  fits: always,
  apply: (world) => withSpeakers(world, CORNERS, { gives: 'rough sound' }),
};

/** The treble moves when the engine runs, above all that two tones can tell, on a bike that does nothing of it by design. */
const trebleMoves: Fault = {
  id: 'unlisted',
  variant: 'treble moves',
  title: 'A tone that moves with the engine for a reason that no reading shows',
  severity: null,
  weights: {},
  fits: always,
  apply: (world) =>
    withUnit(world, ({ profile }) => ({
      profile: { ...profile, engineDifference: { gainDb: 4, centreHz: 6000, q: 1 } },
    })),
};

/**
 * Whatever nobody thought of: the rear is silent, or the amplifier is, or it plays rough, and all that can be read is as on a sound bike. With
 * it among the causes being the only one left is not enough: something has to be seen that is not as it should be. What goes
 * wrong unseen may leave the hiss or take it.
 */
export const UNLISTED: readonly Fault[] = [
  silenced('hiss only'),
  silenced('nothing'),
  ...CORNERS.flatMap((corner) => [oneSilenced(corner, 'hiss only'), oneSilenced(corner, 'nothing')]),
  staysOff,
  playsRough,
  trebleMoves,
];
