import { mayBeOff } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { switchedBy } from '../fitted/switched-by.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const inputPlug: ChoiceStep<'cured' | 'out' | 'fault' | 'no-change' | 'no-plug'> = choice({
  place: 'plugs',
  id: 'input-plug',
  short: 'The amplifier’s signal plug',
  ask: 'Pull the signal plug at the amplifier, look at its pins, push it home: does it wake now?',
  phone:
    'Key off. Had the amplifier’s thin signal plug come out? Pull it, look inside, push it in till it clicks. Volume at zero, key on, come up to low music, wait ten seconds: light on, its fault colour, or off? Or are there only screws?',
  how: [
    'Pull the signal plug, look for bent, pushed-back or green pins, push it home until it locks.',
    'Key on, music at your usual volume, wait ten seconds.',
  ],
  why: 'An amplifier that wakes by sound stays asleep with its plug off. Nothing is cheaper to try.',
  tool: 'none',
  minutes: 3,
  conditions: ['key-off', 'amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && mayBeOff(f) && switchedBy(f) !== 'wire',
  observes: ['unit-leads', 'amp'],
  cautions: ['key-off', 'wakes-loud'],
  putRight: ['out'],
  options: {
    cured: 'Yes, it wakes',
    out: 'It had come out. It is in now, and it wakes',
    'no-change': 'No change',
    fault: 'Its fault light comes on',
    'no-plug': 'It has screws, no plug',
  },
  outcomes: {
    cured: 'wakes after pushing home',
    out: 'had come out, wakes when in',
    'no-change': 'no change',
    fault: 'fault light after pushing home',
    'no-plug': 'no such plug',
  },
});
