import { ampDriving } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';
import { engineFigures, RATIO_CHECK, SAME_FIGURE } from './engine-difference.ts';

const hasAmp = (f: Findings): boolean => ampDriving(f.rig, 'rear') !== undefined || f.rig.frontFedBy === 'amp';

export const eqByDesign: Cause = {
  id: 'eq-by-design',
  title: 'Two tunings by design: nothing is broken',
  faults: ['eq-changes-by-design'],
  byDesign: true,
  split: {
    ...RATIO_CHECK,
    without:
      'Outdoors, one song, ear at a speaker: does the tone already change at idle? And has the profile never been changed?',
  },
  mends: ['settings'],
  article: 'why-the-tone-follows-the-engine',
  remedy: (f) => ({
    what: 'The stored profile has two tunings, one for engine off and one for engine running. It left the factory like that.',
    background:
      'The engine-on tuning is made to be heard over engine and wind. Parked, you hear the road tuning without the road.',
    numbers: [...engineFigures(f), SAME_FIGURE],
    repair: [{ do: 'tune-for-riding' }],
    fix: [
      'Set bass and treble parked outdoors with the engine running: that is the tuning you ride with.',
      'Then leave them. With the engine off it sounds different, and that is fine.',
      hasAmp(f)
        ? 'A profile with one tuning for both is for bikes with every speaker on amplifiers made for it. The plan “Does it need a reflash at all?” tells you.'
        : 'A profile with one tuning for both is made for amplifiers: without one it costs four fifths of the power.',
    ],
    tools: 'None',
    minutes: 10,
    who: YOURSELF,
    parts: [],
    notBuy: [
      ...(hasAmp(f) ? [] : ['A reflash for this: without an amplifier it only makes the bike quieter.']),
      'Speakers, a battery or an equaliser: nothing is broken.',
    ],
    proofOfCure: { byEar: 'On the next ride the tone is right, and nobody needs to touch it when parked.' },
  }),
};
