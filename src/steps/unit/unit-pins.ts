import { type ChoiceStep, choice } from '../step.ts';

export const unitPins: ChoiceStep<'level' | 'back'> = choice({
  place: 'unit',
  id: 'unit-pins',
  short: 'Pins of the head unit’s plug',
  ask: 'Look into both halves of the head unit’s plug: do all pins stand level, clean, and in their latches?',
  phone:
    'Look into both halves of the radio’s plug. Is a pin pushed back, bent or green, or are all level and clean? Pull gently at the thick wires from behind: does one slide?',
  how: [
    'No tool on the pins.',
    'The thick wires are its feeds. Pull each gently from behind: one that slides has lost its latch.',
    'Leave the thin twisted pair alone: that is the bike’s data line.',
  ],
  why: 'A feed whose pin slid back leaves the screen dark with every fuse whole.',
  tool: 'none',
  minutes: 6,
  conditions: ['key-off', 'panel-off', 'unit-plug-apart'],
  observes: ['unit-leads'],
  options: { level: 'All level and clean', back: 'One is pushed back, bent, green, or slides' },
  outcomes: { level: 'all level and clean', back: 'a pin pushed back, bent or green' },
  ifCannot: 'The panel stays on: go on without.',
});
