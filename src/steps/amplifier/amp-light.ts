import { ampMayBeThere } from '../fitted/amp-there.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { type ChoiceStep, choice, type Situation } from '../step.ts';
import type { OfEach } from '../subject.ts';

/** Where it may have been said that there is one. */
const TOLD_BY = ['rear-drive', 'front-fed', 'amps-drive'] as const;
/**
 * Where an amplifier is known from “my bike”, or a flow is about one, it is there. Whoever was asked for one in this case may
 * have been misheard.
 */
const isKnownToBeThere = ({ rig, facts }: Situation): boolean =>
  facts['which-amp'] !== undefined || ((rig.amps?.length ?? 0) > 0 && !TOLD_BY.some((id) => facts[id] !== undefined));

export const ampLight: OfEach<
  ChoiceStep<'normal' | 'off' | 'fault' | 'blinks' | 'none' | 'no-amp'>,
  'meant',
  AmpPair
> = ofEachAmp(
  choice({
    place: 'amplifier',
    id: 'amp-light',
    short: atAmp('Amplifier light'),
    ask: (s) => `With music playing, what does the light on ${ampName(s)} show?`,
    phone: (s) =>
      `Don’t take anything apart. Look at the little light on ${ampName(s)}: as usual, off, its fault colour, blinking, or on briefly and then off? Or hasn’t it got one${isKnownToBeThere(s) ? '' : ', or is there no amplifier'}?`,
    how: [
      'Look within 10 seconds, and again after a minute: an amplifier that wakes by sound goes to sleep.',
      'Turn the key off and on once while you watch: does it come on briefly?',
    ],
    why: 'A light that is on does not prove that sound comes out, and one that is off does not prove that the supply is missing. It says where to look first.',
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
      blinks: 'It blinks, or comes on briefly and goes off',
      none: 'There is no light to see',
      'no-amp': 'There is no amplifier',
    },
    leftOut: (s) => (isKnownToBeThere(s) ? ['no-amp'] : []),
    denies: { 'no-amp': TOLD_BY },
    justNow: ['normal'],
    outcomes: {
      normal: 'lit',
      off: 'off',
      fault: 'fault',
      blinks: 'blinks, or on for a moment',
      none: 'no light to see',
      'no-amp': 'no amplifier',
    },
    ifCannot: 'Can’t see the amplifier? Put a hand on it after ten minutes of music. Warm means on.',
  }),
);
