import type { Cause } from '../cause.ts';
import { REAR_AS_LOUD_AS_FRONT, REAR_OVER_FRONT_HEALTHY, rearOverFrontRead } from '../unit/rear-over-front.ts';
import { YOURSELF } from '../who.ts';

export const faderOrBalanceOff: Cause = {
  id: 'fader-or-balance-off',
  title: 'Fader or balance off the middle',
  faults: ['fader-or-balance-off'],
  split: {
    byMeter: 'Fader and balance at 0, tone controls flat, 400 Hz tone: do the rear pairs read 0.7 to 1.4 of the front?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without: 'Put both exactly in the middle and listen.',
  },
  mends: ['settings'],
  remedy: (f) => ({
    what: 'The fader or the balance stands away from the middle and turns the rear down.',
    background: 'Battery work can reset it, and a child or a passenger moves it.',
    numbers: [...rearOverFrontRead(f), REAR_OVER_FRONT_HEALTHY],
    repair: [{ do: 'centre-fader' }],
    fix: [
      'Write down where everything stands now: somebody may have liked it.',
      'Set fader and balance to 0.',
      'Bass and treble flat, loudness and speed volume off. Listen at each corner.',
    ],
    tools: 'None',
    minutes: 2,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: nothing is broken.'],
    proofOfCure: { ...REAR_AS_LOUD_AS_FRONT, byEar: 'All four corners play equally loud.' },
  }),
};
