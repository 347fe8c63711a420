import { ampMayBeThere } from '../fitted/amp-there.ts';
import { atAmp, theAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const highpassTry: ChoiceStep<'cured' | 'no-change' | 'already' | 'none'> = choice({
  place: 'amplifier',
  id: 'highpass-try',
  short: atAmp('High-pass on, bass knob at zero'),
  ask: 'The amplifier’s high-pass on at 80 to 100 Hz and its bass knob at zero: is it clean at that volume now?',
  phone:
    'On the amplifier: filter switch to high-pass, its knob near 80, bass knob to zero. Same volume: clean now, no change, or did it stand like that already?',
  how: [
    'Note how filter and bass knob stand. Key off before a switch is moved.',
    'Filter to high-pass, 80 to 100 Hz. Bass or boost knob to 0. Key on, the same step.',
  ],
  why: 'Below 80 Hz a speaker of this size needs four times the way for each octave, and a bass knob at +12 dB sixteen times the power.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: (f) => ampMayBeThere(f) && theAmp(f).kind !== 'factory',
  observes: EVERY_PART,
  cautions: ['key-off'],
  options: {
    cured: 'Yes, clean now',
    'no-change': 'Changed, and still ugly',
    already: 'It stood like that already',
    none: 'It has no such switch or knob',
  },
  outcomes: { cured: 'clean now', 'no-change': 'no change', already: 'stood so already', none: 'no such switch' },
});
