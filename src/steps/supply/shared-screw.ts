import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { supplyMayFail } from './may-fail.ts';

export const sharedScrew: ChoiceStep<'shared' | 'own'> = choice({
  place: 'supply',
  id: 'shared-screw',
  short: 'Whose ground is on that screw',
  ask: 'Are the grounds of the amplifier and the head unit on one screw or bolt?',
  phone:
    'Follow the ground of the amplifier to its bolt. Does the radio’s ground sit under the same bolt, or does each have its own? Or can you not see where the radio’s goes?',
  how: [
    'From the amplifier’s ground terminal to where its ring is bolted on.',
    'Count the rings there, and follow the others. Only look: nothing is loosened.',
  ],
  why: 'On a bad shared screw what the amplifier draws lifts the head unit’s ground, too. Both fail together, and neither is at fault.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered'],
  sensible: (f) => supplyMayFail(f) && !is(f, 'supply-under-load', 'ok', 'plus-drop'),
  observes: ['amp-supply'],
  options: { shared: 'Yes, on one screw', own: 'No, each has its own' },
  outcomes: { shared: 'one screw for both', own: 'each has its own' },
  ifCannot: 'Its way ends behind the fairing: go on without.',
});
