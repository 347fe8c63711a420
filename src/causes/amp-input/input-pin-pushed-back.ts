import type { Cause } from '../cause.ts';
import { ampName } from '../the-amp.ts';
import { inputInQuestion, placed } from '../where.ts';
import { FITTER } from '../who.ts';
import { arrives, arrivesFigures } from './arrives.ts';

export const inputPinPushedBack: Cause = {
  id: 'input-pin-pushed-back',
  title: (f) => `Pin pushed back in the ${placed(inputInQuestion(f), 'signal plug')} of ${ampName(f)}`,
  faults: ['input-pin-pushed-back'],
  split: {
    byMeter:
      '400 Hz tone: in the back of the signal plug, then at the amplifier’s own side of it. Nothing on that side?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without: 'Key off, signal plug out, look into it from the front: is a pin further back than the others?',
    asStep: { without: 'pin-look' },
  },
  mends: ['unit-leads'],
  article: 'measure-a-speaker-pair',
  remedy: (f) => ({
    what: 'A pin in the amplifier’s signal plug has slipped back: the plug locks, but that pin does not touch.',
    background: 'Once its locking tang is bent flat, plugging in pushes the pin out of the back.',
    numbers: arrivesFigures(f),
    repair: [{ do: 'renew-pin', plug: 'amp-input' }],
    fix: [
      'Key off, amplifier gain down, signal plug out. Pull gently at each wire: the loose one is the pin.',
      'Push it forward until its tang clicks, and tug it again.',
      'Won’t hold? Take it out, bend its tang up, or crimp a new pin on.',
      'Push the plug home until it locks. Tie the loom so that nothing pulls on it.',
    ],
    tools: 'Thin screwdriver or pin tool, crimp tool',
    minutes: 20,
    who: FITTER,
    parts: ['A pin to fit that plug, if the old one won’t hold'],
    notBuy: ['A reflash or an amplifier: the signal stops at the plug.'],
    cautions: ['wakes-loud'],
    proofOfCure: arrives(f),
  }),
};
