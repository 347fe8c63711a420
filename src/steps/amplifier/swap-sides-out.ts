import { type Findings, is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { silentMayBeOnAmp } from './silent-on-amp.ts';
import { pairIn, SWAP_OPTIONS, SWAPPED } from './swapped.ts';

/** After a fault lamp, a wire on the frame or a short a swap would take the good channel with it. */
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
  short: 'Left and right speaker plugs changed over',
  ask: (s) => `Change the left and right ${pairIn(s)}speaker plugs at the amplifier over. Which speaker is silent now?`,
  phone: (s) =>
    `Skip this if a speaker wire may touch the frame. Key off, change the left and right thick ${pairIn(s)}plugs over. Key on, low volume: is the other one silent now, the same one, or do both play? Then key off, and both back.`,
  how: [
    'Mark the plugs. Left in the place of right, right in the place of left, on one pair of speakers.',
    'Key on, low volume, listen. Then key off, and both back.',
  ],
  why: 'If the silence moves, run and speaker are good. If it stays, they are where it comes from.',
  tool: 'ears',
  minutes: 6,
  conditions: ['key-off', 'amp-uncovered', 'amp-outputs-off'],
  sensible: (f) => silentMayBeOnAmp(f) && noShortKnown(f),
  observes: ['amp', 'run', 'speaker'],
  cautions: ['key-off', 'short-suspected'],
  options: SWAP_OPTIONS,
  outcomes: SWAPPED,
  givenUnder: ['which-corner'],
  ifCannot: 'One plug for all, or out of reach: go on without.',
});
