import { loweredV } from '../../rig/levels.ts';
import { estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import { AFTER_THE_VISIT, gainSteps, setGain, settingFigures } from '../amp-input/gain.ts';
import type { Cause } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { readsForGain, readsForLevel } from '../read-first.ts';
import { ampChannels } from '../where.ts';
import { DEALER_OR_SPECIALIST, YOURSELF_OR_FITTER } from '../who.ts';
import { boostFigures, cleanFigures, readAtTop } from './clean-limits.ts';
import { FOR_AMPLIFIERS } from './profile-for-amps.ts';

/** One that was made for the unaltered output keeps it: then range, filter and gain are what is wrong. */
const keepsProfile = ({ rig: { amps = [] } }: Findings): boolean => amps.some(({ needs }) => needs === 'unaltered');

const lowered = (f: Findings): Figure => {
  const { value, low, high, assumed } = loweredV(f.rig);
  return {
    id: 'lowered-level',
    label: 'With an amplified profile the loudest step gives',
    value: assumed ? [low, high] : value,
    unit: 'V',
  };
};

const lookFirst = [
  'Check each amplifier’s papers: was it made for the unaltered output of a head unit like this? If one was, leave the profile, and set range, high-pass and gain as below.',
  'Read the stored profile before you pay: “What is in this head unit now?” takes half an hour.',
];

const BEFORE =
  'Until then: gain to its lowest, input range on speaker level, high-pass on at 80 to 100 Hz, bass knob at zero, volume below where it starts to distort.';

const ASKED =
  'Ask for, in words: rear on, level lowered for amplifiers, no bass boost, and an EQ that stays the same when the engine starts. A profile’s name tells you nothing.';

export const unalteredWithAmp: Cause = {
  id: 'unaltered-with-amp',
  title: 'Unaltered profile in front of the amplifier',
  faults: ['unaltered-profile-with-amp', 'profile-reverted@level'],
  split: {
    byMeter: 'Two tones at one low step, engine off: does 80 Hz read more than two and a half times 400 Hz?',
    needs: ['tone-400'],
    touches: ['unit-front-plus'],
    without:
      'Outdoors, one song, engine off and idling, ear at a speaker: does the tone change? And was it ever reflashed?',
    cautions: ['outdoors', 'hot'],
  },
  mends: ['profile', 'amp'],
  article: 'the-boost-and-small-speakers',
  remedy: (f) => ({
    what: 'The head unit still sends its full level for speakers, with its bass boost, into the amplifier.',
    background: `The bass hits every limit ${Math.round(estimate(f.rig, 'boostDb').value)} dB before the rest. That is what you get when an amplifier was fitted and the profile forgotten, or a unit was swapped at a service.`,
    numbers: [...readAtTop(f), ...cleanFigures(f), ...boostFigures(f), lowered(f), ...settingFigures(f)],
    readFirst: [...readsForLevel(f), ...readsForGain(f)],
    repair: keepsProfile(f)
      ? [
          { do: 'set-selector', selector: 'range', to: 'as-fed' },
          { do: 'set-filter', highpassHz: 80, bassBoostDb: 0 },
          setGain(f, ampChannels(f)),
        ]
      : [FOR_AMPLIFIERS, setGain(f, ampChannels(f))],
    fix: keepsProfile(f)
      ? [
          'This amplifier was made for the unaltered output: the profile stays.',
          'Input range on speaker level, high-pass on at 80 to 100 Hz, bass knob at zero.',
          ...gainSteps(f),
        ]
      : [
          ...lookFirst,
          BEFORE,
          ASKED,
          'Have the job card say what the setting does. Note it on the job card for the next workshop.',
          AFTER_THE_VISIT,
          ...gainSteps(f),
          'If a bass cut was set in the amplifier to counter the boost, take it out.',
        ],
    tools: keepsProfile(f) ? 'Meter, small screwdriver' : 'A dealer’s or a specialist’s tool; a meter for the gain',
    minutes: 40,
    who: keepsProfile(f) ? YOURSELF_OR_FITTER : DEALER_OR_SPECIALIST,
    parts: [],
    notBuy: [
      'Speakers or a stronger amplifier: they would get the same clipped wave.',
      'A visit, before two tones have been measured across the front pair. Ten minutes with a meter.',
    ],
    ifDoneAnyway: 'Left like this, loud bass burns coils and tears cones.',
    proofOfCure: {
      byEar:
        'Clean at the volume where it distorted. There seems to be less bass: the boost is out, so add a little where the speaker can play it.',
      byMeter: 'Two tones at one low step, engine off: 80 Hz reads 0.7 to 1.4 times 400 Hz.',
      needs: ['tone-400'],
    },
  }),
};
