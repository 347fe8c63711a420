import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

/** Where the bass comes back: two speakers that push against each other take it away together, and give it back alone. */
export const endsCompare: ChoiceStep<'front' | 'rear' | 'between' | 'none'> = choice({
  place: 'ears',
  id: 'ends-compare',
  short: 'Bass at the ends of fader and balance',
  ask: 'Is the bass back at an end of the fader or of the balance?',
  phone:
    'A song with bass, not loud. Note how fader and balance are set. Fader fully to the front: thin? Now the balance fully left, then right: is the bass there? The same with the fader at the rear. Where does the bass come back?',
  how: [
    'A song with steady bass, not loud. Note where fader and balance are set.',
    'Fader fully to the front: balance in the middle, then to either end. The same with the fader at the rear.',
    'Then put both back.',
  ],
  why: 'Two speakers of which one is wired the wrong way round push against each other. Together their bass is gone, alone each has it.',
  tool: 'ears',
  compares: true,
  minutes: 2,
  conditions: ['head-unit-playing'],
  // Where a speaker is silent it tells next to nothing, and is asked of nobody; what it would show there is known.
  sensible: (f) => f.outcome('which-corner') !== undefined || is(f, 'how-it-sounds', 'thin'),
  observes: ['run', 'profile', 'settings'],
  options: {
    front: 'Front: thin in the middle of the balance, full at its ends',
    rear: 'Rear: thin in the middle of the balance, full at its ends',
    between: 'Full with the fader at either end, thin in its middle',
    none: 'No, as thin at every end',
  },
  leftOut: ({ rig }) => (rig.rearFitted === 'no' ? ['rear', 'between'] : []),
  outcomes: {
    front: 'full at the ends, front',
    rear: 'full at the ends, rear',
    between: 'full at either end of the fader',
    none: 'thin at every end',
  },
  article: 'polarity',
  ifCannot: 'No fader, no balance? Unplug one speaker of a pair: is there more bass without it?',
});
