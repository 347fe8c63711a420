import { ampMayBeThere } from '../fitted/amp-there.ts';
import { theAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampSwitches: ChoiceStep<'right' | 'mode' | 'range' | 'filter' | 'turn-on' | 'none'> = choice({
  place: 'amplifier',
  id: 'amp-switches',
  short: 'Selectors on the amplifier',
  ask: 'Do the amplifier’s selectors fit the way it is wired?',
  phone:
    'Move nothing. Read me every little switch and knob on the amplifier and where it stands, left to right. Or has it none?',
  how: [
    'Only read them. Key off before you move one.',
    'Inputs: set to the number of pairs that are plugged in.',
    'Crossover: full range, or high-pass at 60 to 120 Hz for the rear, never low-pass.',
    'Range: the highest voltage that comes in must be inside it.',
    'Turn-on: set to wire where there is a remote wire, to sensing where there is none.',
  ],
  why: 'A channel selector left at its default can take the rear channels from inputs that nobody wired.',
  tool: 'none',
  minutes: 5,
  conditions: ['amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && theAmp(f).kind !== 'factory',
  observes: ['amp'],
  options: {
    right: 'They all fit',
    mode: 'The input selector does not fit',
    range: 'The range does not fit, or the gain is at its lowest',
    filter: 'The crossover stands on low-pass, or far too high',
    'turn-on': 'The turn-on selector does not fit',
    none: 'It has no selectors',
  },
  outcomes: {
    right: 'all fit',
    mode: 'input selector wrong',
    range: 'range or gain wrong',
    filter: 'crossover wrong',
    'turn-on': 'turn-on selector wrong',
    none: 'no selectors',
  },
  ifCannot: 'Take a photo of the selector side and send it along with this case.',
});
