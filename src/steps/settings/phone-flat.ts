import { is } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const phoneFlat: ChoiceStep<'cured' | 'no-change'> = choice({
  place: 'settings',
  id: 'phone-flat',
  short: 'Tone settings in the phone off',
  ask: 'All tone settings in the phone and its apps off: is it clean at that volume now?',
  phone:
    'In the phone and in the music app: equaliser off, bass boost off, loudness or level matching off. Play it just as loud: clean now, or no change?',
  how: [
    'Note what is set now. Equaliser, bass boost, loudness and level matching off: in the phone, and in each app.',
    'Phone volume full, then as loud as before.',
  ],
  why: 'A boost in the phone clips the wave before it leaves the phone. Apps keep one for headphones without telling you.',
  tool: 'none',
  minutes: 2,
  conditions: ['ugly-step'],
  sensible: (f) => !is(f, 'clean-source', 'same'),
  observes: EVERY_PART,
  options: { cured: 'Yes, clean now', 'no-change': 'No change, or nothing was set' },
  outcomes: { cured: 'clean now', 'no-change': 'no change' },
});
