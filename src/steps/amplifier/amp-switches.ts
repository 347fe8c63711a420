import { ampMayBeThere } from '../fitted/amp-there.ts';
import { theAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampSwitches: ChoiceStep<'right' | 'mode' | 'range' | 'turn-on'> = choice({
  place: 'amplifier',
  id: 'amp-switches',
  short: 'Selectors on the amplifier',
  ask: 'Do the amplifier’s selectors fit the way it is wired?',
  phone: 'Read me every little switch on the amplifier and where it stands, left to right.',
  how: [
    'Only read them. Key off before you move one.',
    'Inputs: set to the number of pairs that are plugged in.',
    'Crossover: full range or high-pass for the rear, never low-pass.',
    'Range: the highest voltage that comes in must be inside it.',
    'Turn-on: set to wire where there is a remote wire, to sensing where there is none.',
  ],
  why: 'A channel selector left at its default can take the rear channels from inputs that nobody wired.',
  tool: 'none',
  minutes: 5,
  conditions: ['amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && theAmp(f).kind !== 'factory',
  observes: ['amp'],
  cautions: ['hot'],
  options: {
    right: 'They all fit',
    mode: 'The input selector does not fit',
    range: 'The range does not fit, or the gain is at its lowest',
    'turn-on': 'The turn-on selector does not fit',
  },
  outcomes: {
    right: 'all fit',
    mode: 'input selector wrong',
    range: 'range or gain wrong',
    'turn-on': 'turn-on selector wrong',
  },
  ifCannot: 'Take a photo of the selector side and send it along with this case.',
});
