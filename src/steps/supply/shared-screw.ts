import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { supplyMayFail } from './may-fail.ts';

export const sharedScrew: ChoiceStep<'shared' | 'own'> = choice({
  place: 'supply',
  id: 'shared-screw',
  short: 'What shares its ground screw',
  ask: 'Do the grounds of the amplifier and the head unit share one screw or bolt?',
  phone:
    'Follow the amplifier’s ground to its bolt. Is the radio’s ground under the same bolt, or does each have its own? Or can’t you see where the radio’s goes?',
  how: [
    'Follow it from the amplifier’s ground terminal to where its ring is bolted on.',
    'Count the rings there, and follow the others. Just look: don’t loosen anything.',
  ],
  why: 'On a bad shared screw, the amplifier’s current lifts the head unit’s ground too. Both fail together, and neither is at fault.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered'],
  sensible: (f) => supplyMayFail(f) && !is(f, 'supply-under-load', 'ok', 'plus-drop', 'plus-worn'),
  observes: ['amp-supply'],
  options: { shared: 'Yes, on one screw', own: 'No, each has its own' },
  outcomes: { shared: 'one screw for both', own: 'each has its own' },
  ifCannot: 'It disappears behind the fairing: skip it.',
});
