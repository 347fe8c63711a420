import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { unitRuns } from '../unit/unit-dark.ts';

/** For whoever does not find the menu: where the sound goes is heard as well. */
export const headsetHears: ChoiceStep<'hears' | 'silent' | 'none'> = choice({
  place: 'settings',
  id: 'headset-hears',
  short: 'Sound in a headset',
  ask: 'Switch on every headset or helmet that was ever paired with it: does the music play in one of them?',
  phone:
    'Is there a headset or a helmet that was ever paired with that radio, the passenger’s too? Switch it on and hold it to your ear, not on your head: music in it, nothing, or was there never one?',
  how: ['Hold it near the ear before you put it on: it may be loud.', 'The passenger’s headset counts as well.'],
  why: 'Music in a headset shows that it is being sent there and not to the speakers, without any menu.',
  tool: 'ears',
  minutes: 2,
  conditions: ['head-unit-playing'],
  sensible: (f) => is(f, 'audio-target', 'cannot') && unitRuns(f),
  observes: ['settings', 'unit'],
  options: { hears: 'Yes, it plays in a headset', silent: 'No, that is silent too', none: 'There never was one' },
  outcomes: { hears: 'it plays in a headset', silent: 'a headset is silent too', none: 'there never was a headset' },
});
