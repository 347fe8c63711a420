import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { concernsAxle } from '../told/silent-side.ts';

export const secondLook: ChoiceStep<'none' | 'clean' | 'dirty' | 'apart' | 'plays' | 'damaged'> = choice({
  place: 'runs',
  id: 'second-look',
  short: 'The rear lead on its way',
  ask: 'Follow the rear lead under the seat: is it whole, is there another connector in it, and does pushing that home help?',
  phone:
    'Seat off. Follow the lead to the back with your fingers. Is it chewed, cut or crushed? Is there another plug on the way? Is it apart, green or wet inside, or dry and clean? Push it home, key on, music low: does the back play again? Or is there no plug?',
  how: [
    'Follow it from the rear loom plug to the lid hinge, under the seat and along the frame.',
    'Open it, look at both halves, push it home until it locks.',
    'A loose half without a partner counts as apart.',
    'Then key on, music low: does the rear play again? Key off.',
  ],
  why: 'Looms come in two halves. The connector between them sits in the spray, and nobody knows it is there.',
  tool: 'none',
  minutes: 7,
  conditions: ['key-off'],
  // A break beyond the lid’s plug is none of a connector before it.
  sensible: (f) => concernsAxle(f, 'rear') && !is(f, 'run-split', 'lid-side'),
  observes: ['run'],
  cautions: ['key-off'],
  putRight: ['plays'],
  options: {
    none: 'No other connector found',
    clean: 'Found, dry and clean',
    dirty: 'Found, green, wet or filmed',
    apart: 'Found, and it was apart',
    plays: 'Found connected. Pushed home, and the rear plays again',
    damaged: 'The lead itself is chewed, cut, crushed or bare',
  },
  outcomes: {
    none: 'none found',
    clean: 'there, dry and clean',
    dirty: 'there, green or wet',
    apart: 'there, apart',
    plays: 'plays after pushing home',
    damaged: 'lead chewed, cut or crushed',
  },
  ifCannot: 'The seat stays on: skip it.',
});
