import { type ChoiceStep, choice } from '../step.ts';
import { silentOnes } from './silent-side.ts';

export const rearHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'rear-history',
  short: 'Before now',
  ask: (s) => `Did ${silentOnes(s, 'the rear')} ever play on this bike?`,
  phone: (s) =>
    `Did ${silentOnes(s, 'the back')} ever play since you have had the bike: never, it did and then stopped, or does it come and go?`,
  how: ['Count only what you heard with your ear at the grille.'],
  why: 'Speakers that never played point to a setting or the fitting. Speakers that stopped point to a plug, a wire or somebody’s work.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  ifCannot: 'Bought like this: we go on without.',
  options: { never: 'Never', stopped: 'It played, then stopped', 'comes-and-goes': 'It comes and goes' },
  outcomes: { never: 'never played', stopped: 'played, then stopped', 'comes-and-goes': 'come and go' },
});
