import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const contactsLook: ChoiceStep<'apart' | 'film' | 'pin' | 'clean'> = choice({
  place: 'plugs',
  id: 'contacts-look',
  short: 'The plug’s contacts',
  ask: 'How was the lid plug: apart, dirty, a pin pushed back, or clean and connected?',
  phone:
    'Had the lid plug come apart? Or was it connected: with a grey or green film on its metal, a pin pushed back or bent, or clean?',
  how: [
    'Look at both halves in good light.',
    'A film on them? Wipe them dry with a lint-free cloth, no abrasive, and try again.',
  ],
  why: 'If the plug was apart, that is cured. A film comes back. A clean plug means the lead itself is breaking inside.',
  tool: 'none',
  minutes: 1,
  conditions: ['key-off', 'lid-plug-apart'],
  sensible: (f) => is(f, 'lid-check', 'cured', 'reacts', 'no-effect', 'hiss-now', 'plays', 'weak'),
  // What a push brought back, or a lid that moves, is a film, a pin or the lead: one look tells.
  completes: (f) => is(f, 'lid-check', 'cured', 'reacts'),
  observes: ['run'],
  options: {
    apart: 'It was apart or not locked',
    film: 'Connected, with dirt or a film',
    pin: 'Connected, with a pin pushed back or bent',
    clean: 'Connected and clean',
  },
  outcomes: { apart: 'was apart', film: 'dirty or filmed', pin: 'a pin pushed back or bent', clean: 'clean' },
  givenUnder: ['lid-check'],
});
