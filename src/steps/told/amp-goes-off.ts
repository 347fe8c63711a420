import { answeredWith, is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampGoesOff: ChoiceStep<
  'stays-on' | 'ugly' | 'always' | 'bumps' | 'wet' | 'running' | 'loud' | 'hot' | 'quiet' | 'unknown'
> = choice({
  place: 'told',
  id: 'amp-goes-off',
  short: 'When it cuts out',
  ask: 'When does it cut out, or show its fault light?',
  phone:
    'The last three times it cut out: on bumps or when somebody sits on, in rain, engine running, loud, hot, quiet, every time from the start, or can’t you tell? Or does it stay on, and is silent, or just sounds bad when loud?',
  how: ['Think of the last three times.', 'Is it on and never cuts out? Then the trouble is that no sound comes out.'],
  why: 'Bumps point to a bad contact, loud music to lost volts, heat to its cooling, quiet music to an amplifier that wakes by sound.',
  tool: 'none',
  minutes: 0.5,
  sensible: (f) =>
    is(f, 'amp-light', 'normal', 'fault') || is(f, 'amp-signs', 'alive') || is(f, 'amp-history', 'comes-and-goes'),
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run', 'speaker'],
  options: {
    'stays-on': 'It stays on, it is just silent',
    ugly: 'It stays on and plays, it just sounds bad when loud',
    always: 'Fault light at once, every time it is switched on',
    bumps: 'On bumps, at full lock, or when something is moved or sat on',
    wet: 'In rain, or after a wash',
    running: 'With the engine running, loud or not',
    loud: 'In loud passages',
    hot: 'When it is hot, and back after some minutes',
    quiet: 'In quiet passages',
    unknown: 'Now and then, with no pattern',
  },
  outcomes: {
    'stays-on': 'stays on',
    ugly: 'stays on, sounds bad when loud',
    always: 'fault light from the start',
    bumps: 'on bumps',
    wet: 'when wet',
    running: 'with the engine running',
    loud: 'in loud passages',
    hot: 'when hot',
    quiet: 'in quiet passages',
    unknown: 'no pattern',
  },
  // What shows its fault light does not stay on, and what is on has no fault from the start.
  leftOut: ({ facts }) => {
    if (answeredWith(facts, 'amp-light', 'fault')) return ['stays-on', 'ugly', 'quiet'];
    return facts['amp-light'] === undefined ? [] : ['always'];
  },
  givenUnder: ['amp-light'],
});
