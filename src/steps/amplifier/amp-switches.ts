import { ampMayBeThere } from '../fitted/amp-there.ts';
import { theAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampSwitches: ChoiceStep<'right' | 'mode' | 'range' | 'filter' | 'turn-on' | 'none'> = choice({
  place: 'amplifier',
  id: 'amp-switches',
  short: 'Selectors on the amplifier',
  ask: 'Do the amplifier’s selectors match the way it is wired?',
  phone:
    'Don’t move anything. Read me every little switch and knob on the amplifier and what it is set to, left to right. Or has it got none?',
  how: [
    'Just read them. Key off before you move one.',
    'Inputs: set to the number of pairs that are plugged in.',
    'Crossover for the rear: full range, or high-pass at 60 to 120 Hz, never low-pass.',
    'Range: it must cover the highest voltage that comes in.',
    'Turn-on: set to wire where there is a remote wire, to sensing where there is none.',
  ],
  why: 'A channel selector left at its default can feed the rear channels from inputs that nobody wired.',
  tool: 'none',
  minutes: 5,
  conditions: ['amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && theAmp(f).kind !== 'factory',
  observes: ['amp'],
  options: {
    right: 'They all match',
    mode: 'The input selector does not match',
    range: 'The range does not match, or the gain is at its lowest',
    filter: 'The crossover is set to low-pass, or far too high',
    'turn-on': 'The turn-on selector does not match',
    none: 'It has no selectors',
  },
  outcomes: {
    right: 'all match',
    mode: 'input selector wrong',
    range: 'range or gain wrong',
    filter: 'crossover wrong',
    'turn-on': 'turn-on selector wrong',
    none: 'no selectors',
  },
  ifCannot: 'Take a photo of the side with the selectors and send it with this case.',
});
