import { fixedOne } from '../both.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const phoneFlat: ChoiceStep<'cured' | 'was-up' | 'no-change'> = choice({
  place: 'settings',
  id: 'phone-flat',
  short: 'Tone settings in the phone off',
  ask: 'All tone settings in the phone and its apps off: is it clean at that volume now?',
  phone:
    'In the phone and in the music app note what is set now. Then equaliser off, bass boost off, loudness or level matching off. Play it just as loud: clean now? If not: was anything on there, or nothing?',
  how: [
    'Note what is set now. Equaliser, bass boost, loudness and level matching off: in the phone, and in each app.',
    'Phone volume full, then as loud as before.',
  ],
  why: 'A boost in the phone clips the wave before it leaves the phone. Apps keep one for headphones without telling you.',
  tool: 'none',
  minutes: 2,
  conditions: ['ugly-step'],
  observes: EVERY_PART,
  both: fixedOne,
  options: {
    cured: 'Yes, clean now',
    'was-up': 'No, though a boost or an equaliser was on',
    'no-change': 'No, nothing was set there',
  },
  outcomes: { cured: 'clean now', 'was-up': 'was on, distorts without it too', 'no-change': 'nothing was set' },
});
