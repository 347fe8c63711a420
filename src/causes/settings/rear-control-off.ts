import type { Cause } from '../cause.ts';
import { REAR_AS_LOUD_AS_FRONT, REAR_OVER_FRONT_HEALTHY } from '../unit/rear-over-front.ts';
import { YOURSELF } from '../who.ts';

export const rearControlOff: Cause = {
  id: 'rear-control-off',
  title: 'Passenger or rear control off',
  faults: ['rear-control-off'],
  split: {
    byMeter: 'Rear control up, 400 Hz tone: do the rear pairs at the head unit come up with it?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without: 'Rear control up, the passenger’s headset off, its cord too: does the rear play?',
    asStep: { without: 'rear-control' },
  },
  mends: ['settings'],
  article: 'how-the-signal-travels',
  remedy: () => ({
    what: 'The control for the rear is off or turned down, or a passenger’s headset takes the sound.',
    background: 'It sits at the passenger’s armrest or pod, or as a “rear speakers” item in the menu.',
    numbers: [REAR_OVER_FRONT_HEALTHY],
    repair: [{ do: 'turn-up-rear-control' }],
    fix: [
      'Set the rear control to on and turn it up.',
      'A passenger’s headset on its cord, or paired? Cord off the bike, headset switched off.',
      'Show the passenger which button does it.',
    ],
    tools: 'None',
    minutes: 1,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: nothing is broken.'],
    proofOfCure: REAR_AS_LOUD_AS_FRONT,
  }),
};
