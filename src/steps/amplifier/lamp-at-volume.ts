import { firstOf } from '../both.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const lampAtVolume: ChoiceStep<'steady' | 'goes' | 'none' | 'no-amp'> = choice({
  place: 'amplifier',
  id: 'lamp-at-volume',
  short: 'Amplifier light while it distorts',
  ask: 'While it distorts: does the amplifier’s light stay as it is, or does it go off, turn red or blink with the beat?',
  phone:
    'Have somebody watch the little light on the amplifier while it distorts, a few seconds. Steady, or does it go off, change colour or blink with the bass? Or is there no light, or no amplifier?',
  how: [
    'A track with bass at the step where it distorts, engine off. Then the same at idle, outdoors.',
    'A few seconds only, ears covered.',
  ],
  why: 'A light that follows the beat: the amplifier is running out of volts, or protecting itself. Then it is supply or load, not a setting.',
  tool: 'none',
  minutes: 2,
  conditions: ['amp-uncovered', 'ugly-step'],
  sensible: ampMayBeThere,
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['outdoors'],
  both: firstOf('none', 'goes', 'steady'),
  options: {
    steady: 'It stays lit as usual',
    goes: 'It goes off, turns red, or blinks with the beat',
    none: 'There is no light to see',
    'no-amp': 'There is no amplifier',
  },
  leftOut: ({ facts }) => (facts['amps-drive'] ? [] : ['no-amp']),
  denies: { 'no-amp': ['amps-drive'] },
  outcomes: { steady: 'steady', goes: 'follows the beat', none: 'no light to see', 'no-amp': 'no amplifier' },
  ifCannot: 'Out of reach: listen for it cutting in and out instead.',
});
