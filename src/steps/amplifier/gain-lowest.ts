import { firstOf } from '../both.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { atAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const gainLowest: ChoiceStep<'clean' | 'harsh' | 'none'> = choice({
  place: 'amplifier',
  id: 'gain-lowest',
  short: atAmp('Its gain at the lowest'),
  ask: 'Volume left where it distorts, amplifier gain turned right down: quieter and clean, or quieter and still distorted?',
  phone:
    'Mark where the gain knobs are set. Leave the volume at the number where it distorts, and turn the gain right down. Is it quieter and clean now, or quieter and still distorted? Or has it got no knob?',
  how: [
    'Mark where each gain knob is set, with a pen.',
    'Volume at the step where it distorts. Turn the gain slowly right down, and listen again.',
    'Then back to the mark.',
  ],
  why: 'Clean now: the amplifier or the speakers were being overdriven. Still distorted: it was distorted before it reached the amplifier.',
  tool: 'none',
  minutes: 3,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: ampMayBeThere,
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  both: firstOf('none', 'harsh', 'clean'),
  options: { clean: 'Quieter and clean', harsh: 'Quieter and still distorted', none: 'It has no gain knob' },
  outcomes: { clean: 'clean', harsh: 'still distorted', none: 'no gain knob' },
  ifCannot: 'Out of reach or sealed: skip it.',
});
