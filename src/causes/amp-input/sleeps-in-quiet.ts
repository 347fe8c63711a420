import type { Cause } from '../cause.ts';
import { AmpName } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { hearsFigures } from './hears.ts';
import { STARTS_WITH_KEY, WAKE_BY_WIRE_PARTS, WAKE_BY_WIRE_STEPS } from './wake-by-wire.ts';

export const sleepsInQuiet: Cause = {
  id: 'sleeps-in-quiet',
  title: (f) => `${AmpName(f)} wakes by sound, and falls asleep in quiet passages`,
  faults: ['sense-sleeps-in-quiet'],
  split: {
    byMeter: '400 Hz tone so low that it goes to sleep: are the volts across its inputs below what wakes it?',
    needs: ['tone-400'],
    touches: ['amp-in-plus'],
    without: 'Phone at full media volume, the bike turned down to the same loudness: does it stay awake?',
  },
  mends: ['amp-supply', 'amp'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: 'The amplifier wakes by sound, and falls asleep when there is too little of it.',
    background:
      'Low volume, a call that ducks the music or directions only: then it waits for the next loud sound. A click at each wake-up is normal for such amplifiers.',
    numbers: hearsFigures(f),
    repair: [{ do: 'wake-by-wire' }],
    fix: [
      'Phone at full media volume, tone controls in the middle, then set the bike’s volume. Good enough? Then leave it at that.',
      ...WAKE_BY_WIRE_STEPS,
    ],
    tools: 'Crimp tool, spanner for the battery',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    parts: WAKE_BY_WIRE_PARTS,
    notBuy: ['An amplifier or a reflash: it is doing what it was made for.'],
    proofOfCure: { byEar: `Fifteen minutes at low volume without a dropout. ${STARTS_WITH_KEY}` },
  }),
};
