import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';
import { writeDown } from './write-down.ts';

export const speedVolume: Cause = {
  id: 'speed-volume',
  title: 'Volume that follows the speed',
  faults: ['loudness-or-speed-volume@speed'],
  split: {
    byMeter:
      '400 Hz tone, volume untouched, engine off and idling outdoors: do the volts rise, but not with the setting off?',
    needs: ['tone-400', 'engine-running'],
    touches: ['unit-front-plus'],
    without: 'Note what is set. Speed volume and loudness off in the menu: does it stay the same now?',
    asStep: { without: 'speed-off' },
  },
  mends: ['settings'],
  article: 'why-the-tone-follows-the-engine',
  remedy: (f) => ({
    what: 'A head unit setting turns it up with speed or with the engine.',
    background: 'It is meant to keep up with the wind. Set high, you hear it as a jump, most of all in the bass.',
    numbers: [],
    repair: [{ do: 'flatten-tone', of: 'unit' }],
    fix: [
      ...writeDown(f, 'speed-off', 'how speed volume, loudness, bass and treble are set'),
      'Speed volume off, loudness off, bass and treble at 0. Engine off and on once more, outdoors: the same?',
      'Then set it to taste: its lowest step, or off.',
    ],
    tools: 'None',
    minutes: 3,
    who: YOURSELF,
    parts: [],
    notBuy: ['A reflash, an amplifier or speakers: nothing is broken.'],
    cautions: ['outdoors', 'hot'],
    proofOfCure: { byEar: 'With it off, the same engine off and idling. With the old setting the jump is back.' },
  }),
};
