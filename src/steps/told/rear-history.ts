import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { silentOnes } from './silent-side.ts';

export const rearHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'rear-history',
  short: 'Before now',
  ask: (s) => `Did ${silentOnes(s, 'the rear')} ever play on this bike?`,
  phone: (s) =>
    `Has ${silentOnes(s, 'the back')} ever played since you have had the bike? Never, it used to and then stopped, or it comes and goes?`,
  how: ['Only what you heard with your ear at the grille counts.'],
  why: 'If they never played, suspect a setting or the fitting. If they stopped, suspect a plug, a wire or somebody’s work.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  sensible: (f) => !is(f, 'which-corner', 'thin'),
  ifCannot: 'Bought like this: skip it.',
  options: { never: 'Never', stopped: 'It used to play, then stopped', 'comes-and-goes': 'It comes and goes' },
  outcomes: { never: 'never played', stopped: 'played, then stopped', 'comes-and-goes': 'comes and goes' },
});
