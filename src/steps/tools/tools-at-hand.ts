import { type ChoiceStep, choice } from '../step.ts';

export const toolsAtHand: ChoiceStep<'meter' | 'none'> = choice({
  place: 'tools',
  id: 'tools-at-hand',
  short: 'Meter at hand',
  ask: 'Do you have a multimeter with you?',
  phone: 'Have you got a multimeter there, even a cheap one, and are you happy to use it?',
  how: ['Any meter with AC volts and ohms will do.', 'The test tones come from this page, or from a memory stick.'],
  why: 'Ears and eyes rank the suspects. A reading proves one.',
  tool: 'none',
  minutes: 0.2,
  observes: [],
  options: { meter: 'Yes, a meter', none: 'No meter here' },
  outcomes: { meter: 'yes', none: 'no meter' },
});
