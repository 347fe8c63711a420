import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const contactsLook: ChoiceStep<'apart' | 'film' | 'pin' | 'clean'> = choice({
  place: 'plugs',
  id: 'contacts-look',
  short: 'The plug’s contacts',
  ask: 'How did the lid plug look: apart, dirty, a pin pushed back, or clean and together?',
  phone:
    'Was the lid plug really apart? Or was it together: with a grey or green film on its metal, with a pin pushed back or bent, or clean?',
  how: [
    'Look at both halves in good light.',
    'With a film on them: wipe them dry with a lint-free cloth, no abrasive, and try again.',
  ],
  why: 'A plug that was apart is cured. A film comes back, and a clean plug means that the lead itself breaks inside.',
  tool: 'none',
  minutes: 1,
  conditions: ['key-off', 'lid-plug-apart'],
  sensible: (f) => is(f, 'lid-check', 'cured', 'reacts', 'no-effect', 'hiss-now', 'plays', 'weak'),
  // What a push brought back, or a lid that moves, is a film, a pin or the lead: one look tells.
  completes: (f) => is(f, 'lid-check', 'cured', 'reacts'),
  observes: ['run'],
  options: {
    apart: 'It was apart or not locked',
    film: 'Together, with dirt or a film',
    pin: 'Together, with a pin pushed back or bent',
    clean: 'Together and clean',
  },
  outcomes: { apart: 'was apart', film: 'dirty or filmed', pin: 'a pin pushed back or bent', clean: 'clean' },
  givenUnder: ['lid-check'],
});
