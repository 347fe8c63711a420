import { type ChoiceStep, choice } from '../step.ts';

export const wishSameEq: ChoiceStep<'yes' | 'no'> = choice({
  place: 'plan',
  id: 'wish-same-eq',
  short: 'Same EQ wanted',
  ask: 'Should bass and treble stay the same when the engine starts?',
  phone: 'When you start the engine, bass and treble may change. Does that bother you: should they stay the same?',
  how: ['The unaltered head unit changes its EQ when the engine runs. That is how it is made, not a fault.'],
  why: 'Only some amplified profiles keep one EQ. If you want that, the kind of profile matters.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { yes: 'Yes, they should stay the same', no: 'No, I do not mind' },
  outcomes: { yes: 'wanted', no: 'not wanted' },
  ifCannot: 'We assume no, and name the better kind all the same.',
});
