import { answeredWith, is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampGoesOff: ChoiceStep<
  'stays-on' | 'always' | 'bumps' | 'wet' | 'running' | 'loud' | 'hot' | 'quiet' | 'unknown'
> = choice({
  place: 'told',
  id: 'amp-goes-off',
  short: 'When it goes off',
  ask: 'When does it go off, or show its fault lamp?',
  phone:
    'The last three times it went dark or showed its fault: on bumps, in rain, engine running, loud, hot, quiet, each time from the start, or can nobody tell? Or does it stay on?',
  how: ['Think of the last three times.', 'It is on and never goes off? Then the trouble is that no sound comes out.'],
  why: 'Bumps point to a contact, loud music to volts that are lost, heat to its cooling, quiet music to its listening.',
  tool: 'none',
  minutes: 0.5,
  sensible: (f) =>
    is(f, 'amp-light', 'normal', 'fault') || is(f, 'amp-signs', 'alive') || is(f, 'amp-history', 'comes-and-goes'),
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  options: {
    'stays-on': 'It stays on, it is only silent',
    always: 'Fault lamp at once, each time it is switched on',
    bumps: 'On bumps, at full lock, or when something is moved',
    wet: 'In rain, or after a wash',
    running: 'With the engine running, loud or not',
    loud: 'In loud passages',
    hot: 'When it is hot, and back after minutes',
    quiet: 'In quiet passages',
    unknown: 'At times, and nobody knows when',
  },
  outcomes: {
    'stays-on': 'stays on',
    always: 'fault lamp from the start',
    bumps: 'on bumps',
    wet: 'when wet',
    running: 'with the engine running',
    loud: 'in loud passages',
    hot: 'when hot',
    quiet: 'in quiet passages',
    unknown: 'nobody knows when',
  },
  // What shows its fault lamp does not stay on, and what is on has no fault from the start.
  leftOut: ({ facts }) => {
    if (answeredWith(facts, 'amp-light', 'fault')) return ['stays-on', 'quiet'];
    return facts['amp-light'] === undefined ? [] : ['always'];
  },
  givenUnder: ['amp-light'],
});
