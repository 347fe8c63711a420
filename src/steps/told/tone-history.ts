import { type ChoiceStep, choice } from '../step.ts';

export const toneHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'tone-history',
  short: 'The engine’s tone before now',
  ask: 'Did it ever sound the same with the engine off and running, on this bike?',
  phone:
    'Did it ever sound the same, engine off and on: never as long as you have had the bike, it did and then changed, or does it come and go?',
  how: ['Count only listening at the stand, with the ear near a speaker.'],
  why: 'What was always so is how the bike is built. What began one day began with a setting, a reflash or a part.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  ifCannot: 'Bought like this, or never noticed: we go on without.',
  options: {
    never: 'Never, as far as I know',
    stopped: 'It did, then it began',
    'comes-and-goes': 'It comes and goes',
  },
  outcomes: { never: 'never the same', stopped: 'the same, then not', 'comes-and-goes': 'comes and goes' },
});
