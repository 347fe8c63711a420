import { boostPowerRatio } from '../../compute/headroom.ts';
import type { Cause } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { YOURSELF } from '../who.ts';
import { writeDown } from './write-down.ts';

/** How many times the power a lift of so many decibels takes. */
export const liftFigures: readonly Figure[] = [6, 10].map((boostDb) => ({
  id: `lift-${boostDb}`,
  label: `${boostDb} dB more bass takes, of the power`,
  value: 100 * boostPowerRatio({ boostDb }),
  unit: '%',
}));

export const toneControlsUp: Cause = {
  id: 'tone-controls-up',
  title: 'Bass or loudness of the head unit turned up',
  faults: ['loudness-or-speed-volume@bass-up'],
  split: {
    byMeter: 'Two tones at one low step, then the tone controls flat, and again: does the ratio of 80 to 400 Hz fall?',
    needs: ['tone-400'],
    touches: ['unit-front-plus'],
    without: 'Note what is set. Bass and treble at 0, loudness off: clean at the same volume?',
    asStep: { without: 'unit-flat' },
  },
  mends: ['settings'],
  article: 'the-boost-and-small-speakers',
  remedy: (f) => ({
    what: 'The head unit’s tone controls boost the bass, so it hits every limit first.',
    background: 'On an unaltered profile that comes on top of a boost of 12 to 14 dB.',
    numbers: liftFigures,
    repair: [{ do: 'flatten-tone', of: 'unit' }],
    fix: [
      ...writeDown(f, 'unit-flat'),
      'Bass, mid and treble at 0, loudness off, speed volume off.',
      'Then set it to taste, with your music at your volume: bass one step below where it distorts.',
    ],
    tools: 'None',
    minutes: 3,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: nothing is broken.'],
    proofOfCure: { byEar: 'Clean at the volume where it distorted, and distorted again with the old settings.' },
  }),
};
