import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const popSpeaker: ChoiceStep<'moves' | 'dead'> = choice({
  place: 'runs',
  id: 'pop-speaker',
  short: '1.5 V cell on the speaker itself',
  ask: 'Grille off, one wire off: touch the cell to the speaker’s own tabs. Does the cone move?',
  phone: 'Now at the speaker itself, one wire pulled off: touch the little battery to its two tabs. A click?',
  how: ['Key off. One wire off the speaker.', 'The cell on the two tabs, half a second.', 'Watch the cone.'],
  why: 'A cone that moves here but not from the far end of the run: the wire between is broken.',
  tool: 'cell',
  minutes: 8,
  conditions: ['key-off', 'grille-off'],
  sensible: (f) => is(f, 'pop-run', 'dead'),
  observes: ['speaker'],
  cautions: ['cell', 'cone', 'warranty'],
  options: { moves: 'Yes, it moves', dead: 'No, nothing' },
  outcomes: { moves: 'cone moves', dead: 'nothing' },
});
