import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const rearControl: ChoiceStep<'cured' | 'no-change' | 'none'> = choice({
  place: 'settings',
  id: 'rear-control',
  short: 'Passenger control',
  ask: 'Is there a control for the passenger or the rear, and does turning it up bring the sound back?',
  phone: 'Are there buttons or a knob for the passenger, or a rear on and off item in the menu? Turn it up.',
  how: [
    'Look at the passenger’s armrest or pod, and for a “rear speakers” item in the menu.',
    'Set it to on and turn it up.',
  ],
  why: 'A rear control that is off looks exactly like a dead rear.',
  tool: 'ears',
  minutes: 0.5,
  conditions: ['head-unit-playing'],
  observes: EVERY_PART,
  options: { cured: 'Yes, that was it', 'no-change': 'It is on, still silent', none: 'There is no such control' },
  outcomes: { cured: 'rear plays', 'no-change': 'on, no change', none: 'none fitted' },
});
