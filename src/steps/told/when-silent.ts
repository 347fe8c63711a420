import { is } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';
import { silentOnes } from './silent-side.ts';

export const whenSilent: ChoiceStep<
  'always' | 'bumps' | 'wet' | 'hot' | 'steering' | 'running' | 'loud' | 'quiet' | 'unknown'
> = choice({
  place: 'told',
  id: 'when-silent',
  short: 'When it is silent',
  ask: (s) => `When is ${silentOnes(s, 'the rear')} silent or weak: all the time, or only sometimes?`,
  phone: (s) =>
    `Is ${silentOnes(s, 'the back')} dead all the time? Or on bumps, when somebody sits on, when wet, when hot, at full lock, with the engine running, when loud, when quiet, or can’t you tell when?`,
  how: ['Think of the last three times.', '“Always” means that nothing brings it back, not even for a moment.'],
  why: 'Bumps and full lock point to a contact, rain to water in a plug, loud music to lost volts, quiet music to an amplifier that wakes by sound.',
  tool: 'none',
  minutes: 0.5,
  sensible: (f) => !is(f, 'rear-history', 'never') && !is(f, 'which-corner', 'thin'),
  observes: EVERY_PART,
  options: {
    always: 'Always',
    bumps: 'On bumps, or when something is moved or sat on',
    wet: 'In rain, or after a wash',
    hot: 'When it is hot',
    steering: 'At full lock of the steering',
    running: 'With the engine running',
    loud: 'When it is loud',
    quiet: 'When it is quiet',
    unknown: 'Now and then, with no pattern',
  },
  outcomes: {
    always: 'always',
    bumps: 'on bumps',
    wet: 'when wet',
    hot: 'when hot',
    steering: 'at full lock',
    running: 'with the engine running',
    loud: 'when loud',
    quiet: 'when quiet',
    unknown: 'no pattern',
  },
  givenUnder: ['rear-history'],
});
