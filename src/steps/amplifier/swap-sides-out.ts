import { type Findings, is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { lookedAtWhilePlaying } from '../told/comes-and-goes.ts';
import { silentMayBeOnAmp } from './silent-on-amp.ts';
import { pairIn, SWAP_OPTIONS, SWAPPED } from './swapped.ts';

/** After a fault light, a wire on the frame or a short a swap would take the good channel with it. */
const noShortKnown = (f: Findings): boolean =>
  !is(f, 'wire-to-frame', 'shorted', 'unclear') &&
  !is(f, 'wire-to-frame@front', 'shorted', 'unclear') &&
  !is(f, 'run-ohms', 'low') &&
  !is(f, 'run-ohms@front', 'low') &&
  !is(f, 'bulb-to-frame', 'to-frame', 'across');

/** The same with the speaker plugs: the amplifier and what is before it, or the run and its speaker. */
export const swapSidesOut: ChoiceStep<'moves' | 'stays' | 'plays'> = choice({
  place: 'amplifier',
  id: 'swap-sides-out',
  short: 'Left and right speaker plugs swapped',
  ask: (s) => `Swap the left and right ${pairIn(s)}speaker plugs at the amplifier. Which speaker is silent now?`,
  phone: (s) =>
    `Skip this if a speaker wire may touch the frame. Key off, swap the left and right thick ${pairIn(s)}plugs. Key on, low volume: is the other one silent now, the same one, or do both play? Then key off, and both plugs back.`,
  how: [
    'Mark the plugs. On one pair of speakers, put left where right was and right where left was.',
    'Key on, low volume, listen. Then key off, and put both back.',
  ],
  why: 'If the silence moves, the run and its speaker are good. If it stays, the fault is in one of them.',
  tool: 'ears',
  compares: true,
  minutes: 6,
  conditions: ['key-off', 'amp-uncovered', 'amp-outputs-off'],
  // What plays just now plays on either plug.
  sensible: (f) => silentMayBeOnAmp(f) && noShortKnown(f) && !lookedAtWhilePlaying(f),
  observes: ['amp', 'run', 'speaker'],
  cautions: ['key-off', 'short-suspected'],
  justNow: ['plays'],
  options: SWAP_OPTIONS,
  outcomes: SWAPPED,
  givenUnder: ['which-corner'],
  ifCannot: 'One plug for everything, or out of reach: skip it.',
});
