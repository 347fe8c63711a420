import { silentMayBeOnAmp } from '../amplifier/silent-on-amp.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const pinLook: ChoiceStep<'level' | 'back' | 'out' | 'no-plug'> = choice({
  place: 'plugs',
  id: 'pin-look',
  short: 'Pins of the signal plug',
  ask: 'Look into both halves of the amplifier’s signal plug: are all the pins level?',
  phone:
    'Look into both halves of the thin signal plug from the front. All pins level, or is one pushed back or bent? Or wasn’t the plug in at all? Or are there only screws?',
  how: [
    'Before you pull it: is it in at all, and locked? If it has come out, even just one pair of wires, that is the answer.',
    'Both halves, from the front, in good light.',
    'Pull gently at each wire from behind: a pin that slides has never latched.',
    'Then push the plug home until it locks.',
  ],
  why: 'A pin that never latched slides back when the plug goes in. It looks plugged in, and nothing gets through.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered', 'signal-plug-out'],
  sensible: (f) => (f.facts['which-corner'] ? silentMayBeOnAmp(f) : ampMayBeThere(f)),
  observes: ['unit-leads'],
  putRight: ['out'],
  options: {
    level: 'All level, none slides',
    back: 'One is pushed back, bent, or slides',
    out: 'It was not in, or had come out',
    'no-plug': 'It has screws, no plug',
  },
  outcomes: {
    level: 'all pins level',
    back: 'a pin pushed back or bent',
    out: 'the plug was not in',
    'no-plug': 'no such plug',
  },
});
