import { firstOf } from '../both.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const cleanEnough: ChoiceStep<'enough' | 'quiet'> = choice({
  place: 'ears',
  id: 'clean-enough',
  short: 'Loudness while clean',
  ask: 'Turned down until it is clean: is it still about as loud as a system like this should be?',
  phone: 'Turn it down until it is just clean. Is that about as loud as it ought to be, or far too quiet?',
  how: ['Compare with how loud it used to be, or with another bike built the same way.'],
  why: 'Clean and loud enough: somebody is asking for more than there is. Clean and far too quiet: level is being lost or wasted somewhere.',
  tool: 'ears',
  minutes: 1,
  conditions: ['head-unit-playing'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  both: firstOf('quiet', 'enough'),
  options: { enough: 'Yes, about as loud as it should be', quiet: 'No, far too quiet' },
  outcomes: { enough: 'loud enough', quiet: 'far too quiet' },
});
