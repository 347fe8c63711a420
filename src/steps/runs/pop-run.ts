import { isKnown } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const popRun: ChoiceStep<'moves' | 'dead'> = choice({
  place: 'runs',
  id: 'pop-run',
  short: '1.5 V cell on the rear run',
  ask: 'Touch a 1.5 V cell to the two wires of a rear run, plug apart. Does the speaker click?',
  phone: 'Key off, pull the rear speaker plug. Touch the little battery to the two wires for half a second. A click?',
  how: [
    'Key off. Pull the plug that feeds the rear speakers: at the amplifier, or else the plug of the rear loom.',
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
  options: { moves: 'Both click', dead: 'No click on one or both' },
  outcomes: { moves: 'clicks', dead: 'no click' },
});
