import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const rearControl: ChoiceStep<'cured' | 'plays' | 'weak' | 'no-change' | 'none'> = choice({
  place: 'settings',
  id: 'rear-control',
  short: 'Passenger control',
  ask: 'Is there a control or a headset for the passenger? Control up, headset off: does the rear play now?',
  phone:
    'Are there buttons or a knob for the passenger, or a rear item in the menu? Note how it is set, then turn it up slowly, with no passenger’s headset switched on or connected. Does the back play, play weakly, or stay silent? Or is there neither control nor headset?',
  how: [
    'Look at the passenger’s armrest or pod, and for a “rear speakers” item in the menu.',
    'Note how it is set. Then to on and turned up. A passenger’s headset on its cord, or paired? Cord off the bike, headset switched off: some bikes give the rear’s sound to it alone.',
  ],
  why: 'A rear control that is off looks exactly like a dead rear.',
  tool: 'ears',
  minutes: 0.5,
  conditions: ['head-unit-playing'],
  observes: EVERY_PART,
  cautions: ['comes-back-loud'],
  options: {
    cured: 'Yes, that was it',
    'no-change': 'It is on. Still silent, on one side or both',
    plays: 'It plays, and it was up already',
    weak: 'It is up, and the rear plays weakly',
    none: 'There is neither',
  },
  justNow: ['plays'],
  rightBefore: { plays: 'no-change' },
  notFitted: ['none'],
  outcomes: {
    cured: 'rear plays',
    'no-change': 'on, no change',
    plays: 'plays right now anyway',
    weak: 'plays weakly',
    none: 'none fitted',
  },
});
