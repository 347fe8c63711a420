import { is } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';
import { silentOnes } from '../told/silent-side.ts';

export const faderCentre: ChoiceStep<'cured' | 'plays' | 'weak' | 'no-change' | 'none'> = choice({
  place: 'settings',
  id: 'fader-centre',
  short: 'Fader and balance in the middle',
  ask: (s) => `Set fader and balance to the middle. Does ${silentOnes(s, 'the rear')} play now?`,
  phone: (s) =>
    `In the sound menu note how fader and balance are set, then put both exactly in the middle. Does ${silentOnes(s, 'the back')} play now? Weakly? Was one of them off the middle? Or is there no such menu?`,
  how: [
    'Note where both are set now.',
    'Play music at a low volume.',
    'Note how fader and balance are set. Put both at 0, and listen at the grille.',
  ],
  why: 'A fader or balance at its end silences two speakers completely. Battery work can reset it, and a child or passenger can move it.',
  tool: 'ears',
  minutes: 1,
  conditions: ['head-unit-playing'],
  sensible: (f) =>
    !is(f, 'which-corner', 'thin') &&
    !(is(f, 'rear-inputs', 'front') && (is(f, 'rear-hiss', 'hiss') || is(f, 'lid-check', 'hiss-now'))),
  observes: EVERY_PART,
  options: {
    'no-change': 'No, still silent, on one side or both',
    cured: 'Yes. One was off the middle',
    plays: 'It plays, and both were in the middle already',
    weak: 'It plays, but only weakly',
    none: 'There is no fader and no balance',
  },
  justNow: ['plays'],
  rightBefore: { plays: 'no-change' },
  outcomes: {
    'no-change': 'no change',
    cured: 'it plays',
    plays: 'plays right now anyway',
    weak: 'plays weakly',
    none: 'no such menu',
  },
  ifCannot: 'Can’t find the menu? The readings work without it.',
});
