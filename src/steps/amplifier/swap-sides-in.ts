import { type ChoiceStep, choice } from '../step.ts';
import { lookedAtWhilePlaying } from '../told/comes-and-goes.ts';
import { silentMayBeOnAmp } from './silent-on-amp.ts';
import { pairIn, SWAP_OPTIONS, SWAPPED } from './swapped.ts';

/** Left and right signal plugs in each other’s place: before the amplifier, or after it. */
export const swapSidesIn: ChoiceStep<'moves' | 'stays' | 'plays'> = choice({
  place: 'amplifier',
  id: 'swap-sides-in',
  short: 'Left and right signal plugs swapped',
  ask: (s) => `Swap the left and right ${pairIn(s)}signal plugs at the amplifier. Which speaker is silent now?`,
  phone: (s) =>
    `Key off, swap the left and right thin ${pairIn(s)}plugs at the amplifier. Key on, low volume: is the other one silent now, the same one, or do both play? Then key off, and both plugs back.`,
  how: [
    'Mark the plugs. On one pair of speakers, put left where right was and right where left was.',
    'Key on, low volume, listen. Then key off, and put both back.',
  ],
  why: 'One side is known to be good. If the silence moves with the plugs, the fault is before the amplifier.',
  tool: 'ears',
  compares: true,
  minutes: 5,
  conditions: ['key-off', 'amp-uncovered'],
  // What plays just now plays on either plug.
  sensible: (f) => silentMayBeOnAmp(f) && !lookedAtWhilePlaying(f),
  observes: ['unit-leads', 'amp', 'run', 'speaker'],
  cautions: ['key-off', 'loud-tone'],
  // Whoever changes plugs over pushes one home that was not.
  putRight: ['plays'],
  justNow: ['plays'],
  options: SWAP_OPTIONS,
  outcomes: SWAPPED,
  givenUnder: ['which-corner'],
  ifCannot: 'One plug for everything, or out of reach: skip it.',
});
