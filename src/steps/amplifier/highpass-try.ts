import { ampMayBeThere } from '../fitted/amp-there.ts';
import { atAmp, theAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const highpassTry: ChoiceStep<'cured' | 'no-change' | 'already' | 'none'> = choice({
  place: 'amplifier',
  id: 'highpass-try',
  short: atAmp('High-pass on, bass knob at zero'),
  ask: 'Amplifier’s high-pass on at 80 to 100 Hz, bass knob at zero: is it clean at that volume now?',
  phone:
    'Note how the filter and the bass knob of the amplifier are set. Key off, filter switch to high-pass, its knob near 80, bass knob to zero. Key on, same volume: clean now, no change, or was it set like that already? Or has it got no such switch?',
  how: [
    'Note how the filter and bass knob are set. Key off before you move a switch.',
    'Filter to high-pass, 80 to 100 Hz. Bass or boost knob to 0. Key on, the same step.',
  ],
  why: 'Below 80 Hz a small cone has to move four times as far for each octave, and a bass knob at +12 dB takes sixteen times the power.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: (f) => ampMayBeThere(f) && theAmp(f).kind !== 'factory',
  observes: EVERY_PART,
  cautions: ['key-off'],
  // Where it stood right for one of two faults and cures the other, it did not stand right.
  both: (one, other) => (one === other ? one : one === 'none' || other === 'none' ? 'none' : 'no-change'),
  options: {
    cured: 'Yes, clean now',
    'no-change': 'Changed, and still distorted',
    already: 'It was set like that already',
    none: 'It has no such switch or knob',
  },
  outcomes: { cured: 'clean now', 'no-change': 'no change', already: 'already set like that', none: 'no such switch' },
});
