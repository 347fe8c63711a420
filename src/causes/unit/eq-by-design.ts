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
  split: {
    ...RATIO_CHECK,
    without:
      'Outdoors, one song, ear at a speaker: does the tone change at idle already? And was the profile never changed?',
  },
  mends: ['settings'],
  article: 'why-the-tone-follows-the-engine',
  remedy: (f) => ({
    what: 'The stored profile has two tunings, one for each state of the engine. It was delivered like that.',
    background:
      'With the engine on it plays against engine and wind. Who compares at the stand hears the one for the road without the road.',
    numbers: [...engineFigures(f), SAME_FIGURE],
    repair: [{ do: 'tune-for-riding' }],
    fix: [
      'Set bass and treble with the engine running, outdoors, at the stand: that is the tuning you ride with.',
      'Then leave them. Engine off it sounds otherwise, and may.',
      hasAmp(f)
        ? 'A profile with one tuning for both is for speakers that all hang on amplifiers made for it. The plan “Does it need a reflash at all?” tells.'
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
    proofOfCure: { byEar: 'On the next ride the tone is right, and nobody touches it at the stand.' },
  }),
};
