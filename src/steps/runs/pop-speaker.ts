import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const popSpeaker: ChoiceStep<'moves' | 'dead'> = choice({
  place: 'runs',
  id: 'pop-speaker',
  short: '1.5 V cell on the speaker itself',
  ask: 'Grille off, one wire off: touch the cell to the speaker’s own tabs. Does the cone move?',
  phone:
    'A 1.5 volt cell, never 9 volt, half a second on the two tabs of the speaker, never on a tweeter. A click, or nothing?',
  how: ['The cell on the two tabs, half a second.', 'Watch the cone.'],
  why: 'A cone that moves here but not from the far end of the run: the wire between is broken.',
  tool: 'cell',
  minutes: 8,
  conditions: ['key-off', 'grille-off'],
  sensible: (f) => is(f, 'pop-run', 'dead', 'faint'),
  observes: ['speaker'],
  cautions: ['cell'],
  options: { moves: 'Yes, it moves', dead: 'No, nothing' },
  outcomes: { moves: 'cone moves', dead: 'nothing' },
});
