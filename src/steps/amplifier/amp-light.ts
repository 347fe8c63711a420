import { ampMayBeThere } from '../fitted/amp-there.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';
import type { OfEach } from '../subject.ts';

export const ampLight: OfEach<ChoiceStep<'normal' | 'off' | 'fault' | 'blinks' | 'none'>, 'meant', AmpPair> = ofEachAmp(
  choice({
    place: 'amplifier',
    id: 'amp-light',
    short: atAmp('Amplifier lamp'),
    ask: (s) => `With music playing, what does the lamp of ${ampName(s)} show?`,
    phone: (s) =>
      `Take nothing apart. Look at the little lamp on ${ampName(s)}: as usual, dark, its fault colour, or does it blink or come on and go dark? Or has it none?`,
    how: [
      'Look within 10 seconds, and again after a minute: an amplifier that listens falls asleep.',
      'Key off and on once while you look: does it come on briefly?',
    ],
    why: 'A lit lamp does not prove that sound comes out, and a dark one does not prove that the supply is missing. It says where to look first.',
    tool: 'none',
    minutes: 1,
    conditions: ['head-unit-playing'],
    sensible: ampMayBeThere,
    observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run'],
    cautions: ['hot'],
    options: {
      normal: 'Lit as usual',
      off: 'Off',
      fault: 'Its fault colour',
      blinks: 'It blinks, or comes on briefly and goes dark',
      none: 'There is no lamp to see',
    },
    outcomes: {
      normal: 'lit',
      off: 'off',
      fault: 'fault',
      blinks: 'blinks, or on for a moment',
      none: 'no lamp to see',
    },
    ifCannot: 'Hidden amplifier: lay a hand on it after ten minutes of music. Warm means on.',
  }),
);
