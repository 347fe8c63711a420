import { type ChoiceStep, choice } from '../step.ts';
import { concernsAxle } from '../told/silent-side.ts';

export const secondLook: ChoiceStep<'none' | 'clean' | 'dirty' | 'apart' | 'plays'> = choice({
  place: 'runs',
  id: 'second-look',
  short: 'A second connector on the way',
  ask: 'Follow the rear lead under the seat: is there another connector in it, how does it look, and does pushing it home help?',
  phone:
    'Seat off. Follow the lead to the back with your fingers. Another plug on the way? Apart, green or wet inside, or dry and clean? Push it home, key on, music low: does the back play again? Or is there no plug?',
  how: [
    'From the plug of the rear loom to the hinge of the lid, under the seat and along the frame.',
    'Open it, look at both halves, push it home until it locks.',
    'A loose half without a partner counts as apart.',
    'Then key on, music low: does the rear play again? Key off.',
  ],
  why: 'Looms are made in two halves. The connector between them sits in spray, and nobody knows that it is there.',
  tool: 'none',
  minutes: 7,
  conditions: ['key-off'],
  sensible: (f) => concernsAxle(f, 'rear'),
  observes: ['run'],
  cautions: ['key-off'],
  putRight: ['plays'],
  options: {
    none: 'No other connector found',
    clean: 'Found, dry and clean',
    dirty: 'Found, green, wet or filmed',
    apart: 'Found, and it was apart',
    plays: 'Found together. Pushed home, and the rear plays again',
  },
  outcomes: {
    none: 'none found',
    clean: 'there, dry and clean',
    dirty: 'there, green or wet',
    apart: 'there, apart',
    plays: 'plays after pushing home',
  },
  ifCannot: 'The seat stays on: go on without.',
});
