import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { ampName } from '../the-amp.ts';
import { inputInQuestion, Placed } from '../where.ts';
import { YOURSELF } from '../who.ts';
import { arrives, arrivesFigures } from './arrives.ts';

/** Whoever found it out and put it in has done most of it. */
const wasOut = (f: Findings): boolean => is(f, 'input-plug', 'out', 'cured') || is(f, 'pin-look', 'out');

export const ampInputPlugOff: Cause = {
  id: 'amp-input-plug-off',
  title: (f) => `${Placed(inputInQuestion(f), 'signal plug')} at ${ampName(f)} not home`,
  faults: ['amp-input-plug-off'],
  split: {
    byMeter:
      '400 Hz tone, one volume step: across a pair at the head unit, then across that input at the amplifier. Far less there, or nothing?',
    needs: ['tone-400'],
    touches: ['amp-in-plus'],
    without: 'Key off, pull the signal plug, push it home until it locks. Key on, music low: does it play?',
    asStep: { without: ['input-plug', 'pin-look'] },
  },
  mends: ['unit-leads'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: 'The amplifier’s signal plug is not home: the head unit’s signal does not get in.',
    background: 'It gets pushed in blind, under a seat or in a saddlebag.',
    numbers: arrivesFigures(f),
    repair: [{ do: 'seat-plug', plug: 'amp-input' }],
    fix: [
      ...(wasOut(f)
        ? ['It is in again. Is it locked? Give it a tug. If it comes out: key off, push it home until it locks.']
        : [
            'Key off, amplifier gain down. Pull the signal plug and look at its pins.',
            'Push it home until it locks, and give it a tug.',
          ]),
      'Tie the loom so that nothing pulls on it.',
    ],
    tools: 'A cable tie',
    minutes: 5,
    who: YOURSELF,
    parts: [],
    notBuy: ['An amplifier or a reflash: the signal never reached the amplifier.'],
    cautions: ['wakes-loud'],
    proofOfCure: arrives(f),
  }),
};
