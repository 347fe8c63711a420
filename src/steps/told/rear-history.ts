import { type ChoiceStep, choice } from '../step.ts';

export const rearHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'rear-history',
  short: 'The rear before now',
  ask: 'Have the rear speakers ever played on this bike?',
  phone: 'Did the back ever play since you have had the bike: never, it did and then stopped, or does it come and go?',
  how: ['Count only sound from the rear itself, heard with your ear at the grille.'],
  why: 'Speakers that never played point to a setting or the fitting. Speakers that stopped point to a plug, a wire or somebody’s work.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  ifCannot: 'Bought like this: we go on without.',
  options: { never: 'Never', stopped: 'They played, then stopped', 'comes-and-goes': 'They come and go' },
  outcomes: { never: 'never played', stopped: 'played, then stopped', 'comes-and-goes': 'come and go' },
});
