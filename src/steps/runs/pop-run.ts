import { isKnown } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const popRun: ChoiceStep<'moves' | 'faint' | 'dead'> = choice({
  place: 'runs',
  id: 'pop-run',
  short: '1.5 V cell on the rear run',
  ask: 'Touch a 1.5 V cell to the two wires of a rear run, plug apart. Does the speaker click?',
  phone:
    'A 1.5 volt cell, never 9 volt, half a second on the two wires of each side. A click on both, a faint one, or none on one of them?',
  how: [
    'A single 1.5 V cell, half a second, one wire on each end.',
    'Listen at the speaker, or let a helper watch the cone. Both sides.',
  ],
  why: 'A click proves wire and coil in one go, without a meter.',
  tool: 'cell',
  minutes: 6,
  conditions: ['key-off', 'rear-plug-apart'],
  sensible: (f) => !isKnown(f, 'run-ohms'),
  observes: ['run', 'speaker'],
  cautions: ['key-off', 'cell'],
  options: { moves: 'Both click', faint: 'Both click, one or both only faintly', dead: 'No click on one or both' },
  outcomes: { moves: 'clicks', faint: 'clicks faintly', dead: 'no click' },
});
