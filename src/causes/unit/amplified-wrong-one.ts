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
    without: 'Look at the reflash job card: does it say that the EQ is the same with the engine off and running?',
  },
  mends: ['profile'],
  article: 'why-the-tone-follows-the-engine',
  remedy: (f) => ({
    what: 'A profile for amplifiers is stored, but one of those that use a different tuning with the engine running.',
    background:
      'There are two kinds, and their names say how many amplifiers, not what they do. It was picked by name.',
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
      'Ask for, in words: as it is now, lowered and without boost, but with an EQ that stays the same when the engine starts.',
      'Have the job card say so. Whoever sold it to you as that owes it to you.',
      'Afterwards it sounds the same with the engine off and running. Set the tone once, either way.',
    ],
    tools: 'A dealer’s or a specialist’s tool',
    minutes: 30,
    who: DEALER_OR_SPECIALIST,
    parts: [],
    notBuy: [
      'An equaliser or speakers: the tuning is in the head unit.',
      'A visit, before both ratios have been measured. Twenty minutes with a meter.',
    ],
    cautions: ['outdoors', 'hot'],
    proofOfCure: {
      byEar: 'Outdoors, one song, ear at a speaker: the same with the engine off and idling.',
      ...RATIO_STAYS,
    },
  }),
};
