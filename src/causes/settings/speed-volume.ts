import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const speedVolume: Cause = {
  id: 'speed-volume',
  title: 'Volume that follows the speed',
  faults: ['loudness-or-speed-volume@speed'],
  split: {
    byMeter:
      '400 Hz tone, volume untouched, engine off and idling outdoors: do the volts rise, and not with the setting off?',
    needs: ['tone-400', 'engine-running'],
    touches: ['unit-front-plus'],
    without: 'Speed volume and loudness off in the menu: does it stay the same now?',
  },
  mends: ['settings'],
  article: 'why-the-tone-follows-the-engine',
  remedy: () => ({
    what: 'A setting of the head unit turns it up with speed or with the engine.',
    background: 'It is meant to keep up with the wind. Set high, it is heard as a jump; the bass stands out first.',
    numbers: [],
    repair: [{ do: 'flatten-tone', of: 'unit' }],
    fix: [
      'Write down how speed volume, loudness, bass and treble stand.',
      'Speed volume off, loudness off, bass and treble at 0. Engine off and on once more, outdoors: the same?',
      'Then to taste: the lowest step of it, or none.',
    ],
    tools: 'None',
    minutes: 3,
    who: YOURSELF,
    parts: [],
    notBuy: ['A reflash, an amplifier or speakers: nothing is broken.'],
    proofOfCure: { byEar: 'The same engine off and idling with it off, and the jump is back with the old setting.' },
  }),
};
