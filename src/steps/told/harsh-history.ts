import { type ChoiceStep, choice } from '../step.ts';

export const harshHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'harsh-history',
  short: 'At that volume before now',
  ask: 'Has it ever been clean at that volume on this bike?',
  phone:
    'Was it ever clean when you played it that loud? Never, it used to be and then it started, or it comes and goes?',
  how: ['Count only the same volume and the same kind of music.'],
  why: 'If it never was clean, suspect how it is set or built. If it started one day, suspect a part, a setting or somebody’s work.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  ifCannot: 'Bought like this: skip it.',
  options: { never: 'Never', stopped: 'It used to be, then it started', 'comes-and-goes': 'It comes and goes' },
  outcomes: { never: 'never clean', stopped: 'clean, then distorted', 'comes-and-goes': 'comes and goes' },
});
