import { type ChoiceStep, choice } from '../step.ts';

export const cleanEnough: ChoiceStep<'enough' | 'quiet'> = choice({
  place: 'ears',
  id: 'clean-enough',
  short: 'Loudness while clean',
  ask: 'Turned down until it is clean: is it still about as loud as such a system should be?',
  phone: 'Turn it down until it is just clean. Is that about as loud as it ought to be, or is it far too quiet then?',
  how: ['Compare with how loud it once was, or with a bike of the same build.'],
  why: 'Clean and loud enough: somebody only wants more than there is. Clean and far too quiet: level is lost or wasted somewhere.',
  tool: 'ears',
  minutes: 1,
  conditions: ['head-unit-playing'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  options: { enough: 'Yes, about as loud as it should be', quiet: 'No, far too quiet' },
  outcomes: { enough: 'loud enough', quiet: 'far too quiet' },
});
