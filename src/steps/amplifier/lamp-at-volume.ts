import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const lampAtVolume: ChoiceStep<'steady' | 'goes' | 'none'> = choice({
  place: 'amplifier',
  id: 'lamp-at-volume',
  short: 'Amplifier lamp when it is ugly',
  ask: 'While it is ugly: does the amplifier’s lamp stay as it is, or does it go dark, red or blink with the beat?',
  phone:
    'Somebody watches the little lamp on the amplifier while it is ugly, a few seconds. Steady, or does it go dark, change colour or blink with the bass?',
  how: [
    'A track with bass, at the ugly step, engine off. Then the same at idle, outdoors.',
    'A few seconds, ears covered.',
  ],
  why: 'A lamp that goes with the beat: the amplifier runs out of volts, or protects itself. Then it is supply or load, and no setting.',
  tool: 'none',
  minutes: 2,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: ampMayBeThere,
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['outdoors'],
  options: {
    steady: 'It stays lit as usual',
    goes: 'It goes dark, red, or blinks with the beat',
    none: 'There is no lamp to see',
  },
  outcomes: { steady: 'steady', goes: 'goes with the beat', none: 'no lamp to see' },
  ifCannot: 'Out of reach: listen instead whether it cuts in and out.',
});
