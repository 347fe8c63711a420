import type { Cause } from '../cause.ts';
import { asLoud, levelFigures } from '../unit/levels-alike.ts';
import { isOfOneSpeaker } from '../where.ts';
import { YOURSELF } from '../who.ts';
import { writeDown } from './write-down.ts';

export const faderOrBalanceOff: Cause = {
  id: 'fader-or-balance-off',
  title: 'Fader or balance off the middle',
  faults: ['fader-or-balance-off'],
  split: (f) => ({
    byMeter: isOfOneSpeaker(f)
      ? 'Fader and balance at 0, 400 Hz tone, at the head unit: do the left and the right pair of one axle read alike?'
      : 'Fader and balance at 0, tone controls flat, 400 Hz tone: do the rear pairs read 0.7 to 1.4 of the front?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without: 'Note how both are set, put them exactly in the middle, and listen.',
    asStep: { without: 'fader-centre' },
  }),
  mends: ['settings'],
  article: 'how-the-signal-travels',
  remedy: (f) => ({
    what: 'The fader or balance is off the middle and turns speakers down.',
    background: 'Battery work can reset it, and a child or passenger can move it.',
    numbers: levelFigures(f),
    repair: [{ do: 'centre-fader' }],
    fix: [
      ...writeDown(f, 'fader-centre'),
      'Set fader and balance to 0.',
      'Bass and treble flat, loudness and speed volume off. Listen at each corner.',
    ],
    tools: 'None',
    minutes: 2,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: nothing is broken.'],
    proofOfCure: { ...asLoud(f), byEar: 'All corners play equally loud.' },
  }),
};
