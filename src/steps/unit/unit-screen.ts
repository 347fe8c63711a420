import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const unitScreen: ChoiceStep<'normal' | 'dark' | 'hung' | 'restarts'> = choice({
  place: 'unit',
  id: 'unit-screen',
  short: 'Head unit screen',
  ask: 'Does the head unit’s screen light up within a minute and respond to a button?',
  phone:
    'Count slowly to sixty, then press any button. Is the radio’s screen as usual, dark, stuck so that no button does anything, or does it keep restarting?',
  how: [
    'Wait a minute.',
    'Press any button. A healthy one responds within a second.',
    'Asks for a code, and does nothing else: that counts as lit without responding.',
  ],
  why: 'A dark screen is a feed, a fuse or the head unit itself. A lit one sends you to what is playing and where it goes.',
  tool: 'none',
  minutes: 2,
  conditions: ['key-on'],
  // A head unit that does not run gives no remote signal either, and its output is not to blame.
  completes: (f) => is(f, 'remote-source', 'dead'),
  observes: ['unit', 'unit-leads'],
  options: {
    normal: 'As usual, and it responds',
    dark: 'It stays dark',
    hung: 'It is lit but does not respond',
    restarts: 'It keeps restarting',
  },
  outcomes: { normal: 'as usual', dark: 'dark', hung: 'stuck', restarts: 'keeps restarting' },
});
