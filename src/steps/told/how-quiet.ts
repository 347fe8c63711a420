import { answeredWith, is } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';
import { silentOnes } from './silent-side.ts';

export const howQuiet: ChoiceStep<'dead' | 'faint' | 'highs'> = choice({
  place: 'told',
  id: 'how-quiet',
  short: 'Dead or faint',
  ask: (s) =>
    answeredWith(s.facts, 'rear-history', 'comes-and-goes')
      ? `When it fails: what still comes from ${silentOnes(s, 'the silent speaker')}?`
      : `With your ear at the grille: what comes from ${silentOnes(s, 'the silent speaker')}?`,
  phone: (s) =>
    `All plugs in, music low. Put your ear to ${silentOnes(s, 'the silent speaker')}: nothing at all, faint music, or only high notes?`,
  how: ['All plugs back home, music on, not loud. Cover the other speakers with a hand or a jacket.'],
  why: 'Dead: a broken path or a dead channel. Faint: a bad contact or a setting. Only high notes: the coil is gone and the tweeter is not.',
  tool: 'none',
  minutes: 0.5,
  observes: EVERY_PART,
  sensible: (f) => !is(f, 'which-corner', 'thin'),
  options: { dead: 'Nothing at all', faint: 'Music, but far too weak', highs: 'Only high notes' },
  outcomes: { dead: 'nothing', faint: 'far too weak', highs: 'only high notes' },
  givenUnder: ['which-corner'],
});
