import { type ChoiceStep, choice } from '../step.ts';

export const unitScreen: ChoiceStep<'normal' | 'dark' | 'hung' | 'restarts'> = choice({
  place: 'unit',
  id: 'unit-screen',
  short: 'Screen of the head unit',
  ask: 'Does the screen of the head unit light up within a minute, and answer a button?',
  phone:
    'Count slowly to sixty, then press any button. Is the radio’s screen as usual, dark, stuck so that no button does anything, or does it start again and again?',
  how: ['Wait a minute.', 'Press any button. A sound one answers within a second.'],
  why: 'A dark screen is a feed, a fuse or the head unit itself. A lit one sends you to what is played, and to where it goes.',
  tool: 'none',
  minutes: 2,
  conditions: ['key-on'],
  observes: ['unit', 'unit-leads'],
  options: {
    normal: 'As usual, and it answers',
    dark: 'It stays dark',
    hung: 'It is lit and answers nothing',
    restarts: 'It starts again and again',
  },
  outcomes: { normal: 'as usual', dark: 'dark', hung: 'stuck', restarts: 'starts again and again' },
});
