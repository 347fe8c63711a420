import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampHistory: ChoiceStep<'never' | 'stopped' | 'comes-and-goes'> = choice({
  place: 'told',
  id: 'amp-history',
  short: 'The amplifier before now',
  ask: 'Has this amplifier ever come on by itself on this bike?',
  phone:
    'Did that amplifier ever come on by itself? Never since it was fitted, it used to and then stopped, or it comes and goes?',
  how: ['Only coming on with the head unit counts, as it should.'],
  why: 'If it never came on, suspect the fitting. If it stopped, suspect a fuse, a contact or the last job done.',
  tool: 'none',
  minutes: 0.3,
  sensible: ampMayBeThere,
  observes: [],
  ifCannot: 'Bought like this: skip it.',
  options: { never: 'Never', stopped: 'It used to, then it stopped', 'comes-and-goes': 'It comes and goes' },
  outcomes: { never: 'never came on', stopped: 'worked, then stopped', 'comes-and-goes': 'comes and goes' },
});
