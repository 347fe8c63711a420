import { estimate } from '../../rig/rig.ts';
import type { Cause } from '../cause.ts';
import { DEALER_OR_SPECIALIST } from '../who.ts';
import { engineFigures, RATIO_CHECK, RATIO_STAYS, SAME_FIGURE } from './engine-difference.ts';

export const amplifiedWrongOne: Cause = {
  id: 'amplified-wrong-one',
  title: 'The amplified profile that changes with the engine',
  faults: ['amplified-profile-eq-changes'],
  split: {
    ...RATIO_CHECK,
    without: 'Look at the work order of the reflash: does it say that the EQ is the same in both states of the engine?',
  },
  mends: ['profile'],
  article: 'why-the-tone-follows-the-engine',
  remedy: (f) => ({
    what: 'A profile for amplifiers is stored, and it is one of those that keep another tuning for the running engine.',
    background:
      'There are two kinds, and their names tell how many amplifiers, not what they do. It was chosen by its name.',
    numbers: [
      ...engineFigures(f),
      SAME_FIGURE,
      {
        id: 'lowered-by',
        label: 'Its level stays lowered by',
        value: estimate(f.rig, 'loweredByDb').value,
        unit: 'dB',
      },
    ],
    repair: [{ do: 'select-profile', eq: 'same' }],
    fix: [
      'Read the stored profile before you pay: “What is in this head unit now?” takes half an hour.',
      'Ask for, in words: as it is now, lowered and without boost, and an EQ that stays the same when the engine starts.',
      'Have the work order say so. Whoever sold it as that owes it.',
      'Afterwards both states sound alike. Set the tone once, in either.',
    ],
    tools: 'A dealer’s or a specialist’s tool',
    minutes: 30,
    who: DEALER_OR_SPECIALIST,
    parts: [],
    notBuy: [
      'An equaliser or speakers: the tuning is in the head unit.',
      'A visit before both ratios were read. Twenty minutes with a meter.',
    ],
    proofOfCure: {
      byEar: 'Outdoors, one song, ear at a speaker: the same with the engine off and idling.',
      ...RATIO_STAYS,
    },
  }),
};
