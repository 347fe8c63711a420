import type { Cause } from '../cause.ts';
import { coneFigures } from '../cone-way.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

const HIGHPASS_HZ = 80;

export const highpassOff: Cause = {
  id: 'highpass-off',
  title: (f) => `High-pass of ${ampName(f)} off, bass boosted`,
  faults: ['highpass-off-with-boost'],
  split: {
    byMeter: 'Speakers off, two tones at one step: does its output read more at 80 Hz than at 400 Hz?',
    needs: ['tone-80'],
    touches: ['amp-out-plus'],
    without: 'High-pass on at 80 to 100 Hz, bass knob at zero: clean at the same step?',
    asStep: { without: 'highpass-try' },
  },
  mends: ['amp'],
  article: 'high-pass-filters',
  remedy: (f) => ({
    what: `${AmpName(f)} sends boosted deep bass to speakers that have no travel left for it.`,
    background:
      'Each octave down takes four times the travel for the same level. A bass knob at +12 dB takes sixteen times the power.',
    numbers: [{ id: 'high-pass', label: 'High-pass to set', value: [HIGHPASS_HZ, 100], unit: 'Hz' }, ...coneFigures(f)],
    repair: [{ do: 'set-filter', highpassHz: HIGHPASS_HZ, bassBoostDb: 0 }],
    fix: [
      'Note how the filter and bass knob are set.',
      'Key off. Filter switch to high-pass, not low-pass, and its multiplier not on ×10.',
      'Knob to 80 to 100 Hz for speakers of 13 to 18 cm, higher for smaller ones. Bass or boost knob to zero.',
      'Key on, the same volume as before. Want more bass? A little boost at 100 to 120 Hz in the tone settings.',
    ],
    tools: 'Small screwdriver',
    minutes: 5,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, before the filter is on: the next ones tear too.', 'A stronger amplifier.'],
    proofOfCure: {
      byEar: 'Bass notes clean at the volume where they distorted.',
      byMeter: 'Speakers off, one step, two tones: 80 Hz reads about 0.7 of 400 Hz with the high-pass at 80.',
      needs: ['tone-80'],
      touches: ['amp-out-plus'],
    },
  }),
};
