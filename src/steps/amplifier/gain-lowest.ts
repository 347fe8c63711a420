import { ampMayBeThere } from '../fitted/amp-there.ts';
import { atAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const gainLowest: ChoiceStep<'clean' | 'harsh' | 'none'> = choice({
  place: 'amplifier',
  id: 'gain-lowest',
  short: atAmp('Its gain at the lowest'),
  ask: 'Volume left at the ugly step, the amplifier’s gain turned to its lowest: quieter and clean, or quieter and still ugly?',
  phone:
    'Mark where the gain knobs stand. Leave the volume at the ugly number, and turn the gain right down. Is it softer and clean now, or softer and still ugly? Or has it no knob?',
  how: [
    'Mark where each gain knob stands, with a pen.',
    'Volume at the ugly step. Turn the gain down slowly to its lowest, and listen again.',
    'Then back to the mark.',
  ],
  why: 'Clean now: it is the amplifier or the speakers that are asked for too much. Still ugly: it was ugly before it came to the amplifier.',
  tool: 'none',
  minutes: 3,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: ampMayBeThere,
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  options: { clean: 'Quieter and clean', harsh: 'Quieter and still ugly', none: 'It has no gain knob' },
  outcomes: { clean: 'clean', harsh: 'still ugly', none: 'no gain knob' },
  ifCannot: 'Out of reach or sealed: go on without.',
});
