import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { fuseMayBeOpen } from './may-fail.ts';

export const fuseLook: OfEach<ChoiceStep<'blown' | 'whole' | 'holder' | 'none'>, 'meant', AmpPair> = ofEachAmp(
  choice({
    place: 'supply',
    id: 'fuse-look',
    short: atAmp('Main fuse, by eye'),
    ask: (s) => `Key off, main fuse of ${ampName(s)} pulled: is its strip burnt through?`,
    phone:
      'Hold the main fuse up to the light. Is the strip burnt through, or whole? Is its holder burnt, green or loose? Or is there no fuse?',
    how: [
      'Note the number on it: that is its amperes.',
      'Hold the strip up to the light, and look at its blades: dull or brown means heat.',
      'A breaker instead of a fuse? Button out or lever down: it has tripped. Leave it like that for now.',
    ],
    why: 'A burnt strip proves that the current was once too high. A whole one proves nothing: it can be open at its cap.',
    tool: 'none',
    minutes: 2,
    conditions: ['fuse-out'],
    sensible: fuseMayBeOpen,
    observes: ['amp-supply'],
    options: {
      blown: 'Burnt through, or the breaker had tripped',
      whole: 'It looks whole',
      holder: 'It looks whole, but its holder is burnt, green or loose',
      none: 'There is no fuse in its lead',
    },
    outcomes: {
      blown: 'burnt through',
      whole: 'looks whole',
      holder: 'whole, in a bad holder',
      none: 'no fuse in its lead',
    },
    ifCannot: 'Can’t find it? Follow the thick positive lead from the battery, or back from the amplifier.',
  }),
);
