import { type ChoiceStep, choice } from '../step.ts';
import { silentMayBeOnAmp } from './silent-on-amp.ts';
import { pairIn, SWAP_OPTIONS, SWAPPED } from './swapped.ts';

/** Left and right signal plugs in each other’s place: before the amplifier, or after it. */
export const swapSidesIn: ChoiceStep<'moves' | 'stays' | 'plays'> = choice({
  place: 'amplifier',
  id: 'swap-sides-in',
  short: 'Left and right signal plugs changed over',
  ask: (s) => `Change the left and right ${pairIn(s)}signal plugs at the amplifier over. Which speaker is silent now?`,
  phone: (s) =>
    `Key off, change the left and right thin ${pairIn(s)}plugs at the amplifier over. Key on, low volume: is the other one silent now, the same one, or do both play? Then key off, and both back.`,
  how: [
    'Mark the plugs. Left in the place of right, right in the place of left, on one pair of speakers.',
    'Key on, low volume, listen. Then key off, and both back.',
  ],
  why: 'One side is known to be good. If the silence moves with the plugs, it comes from before the amplifier.',
  tool: 'ears',
  minutes: 5,
  conditions: ['key-off', 'amp-uncovered'],
  sensible: silentMayBeOnAmp,
  observes: ['unit-leads', 'amp', 'run', 'speaker'],
  cautions: ['key-off', 'loud-tone'],
  // Whoever changes plugs over pushes one home that was not.
  putRight: ['plays'],
  options: SWAP_OPTIONS,
  outcomes: SWAPPED,
  givenUnder: ['which-corner'],
  ifCannot: 'One plug for all, or out of reach: go on without.',
});
