import { type ChoiceStep, choice } from '../step.ts';

export const unitPins: ChoiceStep<'level' | 'back'> = choice({
  place: 'unit',
  id: 'unit-pins',
  short: 'Head unit plug pins',
  ask: 'Look into both halves of the head unit’s plug: are all pins level, clean and latched?',
  phone:
    'Look into both halves of the radio’s plug, nothing pushed into it, and leave the thin twisted pair alone. Is a pin pushed back, bent or green, or are all level and clean? Pull gently at the thick wires from behind: does one slide?',
  how: [
    'No tool on the pins.',
    'The thick wires are its feeds. Pull each gently from behind: if one slides, it has lost its latch.',
    'Leave the thin twisted pair alone: that is the bike’s data line.',
  ],
  why: 'A feed pin that has slid back leaves the screen dark with every fuse whole.',
  tool: 'none',
  minutes: 6,
  conditions: ['key-off', 'panel-off', 'unit-plug-apart'],
  observes: ['unit-leads'],
  options: { level: 'All level and clean', back: 'One is pushed back, bent, green, or slides' },
  outcomes: { level: 'all level and clean', back: 'a pin pushed back, bent or green' },
  ifCannot: 'The panel stays on: skip it.',
});
