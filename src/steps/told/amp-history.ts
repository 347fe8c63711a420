import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'amp-history',
  short: 'The amplifier before now',
  ask: 'Has this amplifier ever come on by itself on this bike?',
  phone:
    'Did that amplifier ever come on by itself: never since it was fitted, it did and then stopped, or does it come and go?',
  how: ['Count only coming on with the head unit, as it should.'],
  why: 'One that never came on points to the fitting. One that stopped points to a fuse, a contact or the last work.',
  tool: 'none',
  minutes: 0.3,
  sensible: ampMayBeThere,
  observes: [],
  ifCannot: 'Bought like this: we go on without.',
  options: { never: 'Never', stopped: 'It did, then it stopped', 'comes-and-goes': 'It comes and goes' },
  outcomes: { never: 'never came on', stopped: 'worked, then stopped', 'comes-and-goes': 'comes and goes' },
});
