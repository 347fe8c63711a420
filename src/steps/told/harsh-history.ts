import { type ChoiceStep, choice } from '../step.ts';

export const harshHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'harsh-history',
  short: 'That loud before now',
  ask: 'Has it ever been clean at that volume on this bike?',
  phone: 'Was it ever clean when you played it that loud: never, it was and then it began, or does it come and go?',
  how: ['Count only the same volume and the same kind of music.'],
  why: 'What never was clean points to how it is set or built. What began one day points to a part, a setting or somebody’s work.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  ifCannot: 'Bought like this: we go on without.',
  options: { never: 'Never', stopped: 'It was, then it began', 'comes-and-goes': 'It comes and goes' },
  outcomes: { never: 'never clean', stopped: 'clean, then harsh', 'comes-and-goes': 'comes and goes' },
});
