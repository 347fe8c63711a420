import { type ChoiceStep, choice } from '../step.ts';

export const toneHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'tone-history',
  short: 'The engine’s tone before now',
  ask: 'Did this bike ever sound the same with the engine off and running?',
  phone:
    'Did it ever sound the same, engine off and on? Never since you have had the bike, it used to and then changed, or it comes and goes?',
  how: ['Only what you heard while parked, ear near a speaker, counts.'],
  why: 'If it was always like that, it is how the bike is built. If it started one day, a setting, a reflash or a part started it.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  ifCannot: 'Bought like this, or never noticed: skip it.',
  options: {
    never: 'Never, as far as I know',
    stopped: 'It used to, then it changed',
    'comes-and-goes': 'It comes and goes',
  },
  outcomes: { never: 'never the same', stopped: 'the same, then not', 'comes-and-goes': 'comes and goes' },
});
