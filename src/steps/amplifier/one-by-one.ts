import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';

export const oneByOne: ChoiceStep<'one' | 'each' | 'together' | 'none'> = choice({
  place: 'amplifier',
  id: 'one-by-one',
  short: 'Speakers back in, one at a time',
  ask: 'Plug the speakers back in one at a time, key off for each: which one brings the fault light on?',
  phone:
    'Key off, plug one speaker in, key on, low volume: fault light? Key off, unplug it, and do the next one. What brings the fault light back: one of them, every one, only all together, or none?',
  how: [
    'Plug in one speaker. Key on, low volume: fault light? Key off, unplug it, try the next.',
    'Leave the one that trips it unplugged, and try the others.',
    'None on its own? Then all of them together, and a little louder.',
  ],
  why: 'The run that trips it alone has the short. If it takes all of them together, the load is too heavy.',
  tool: 'none',
  minutes: 8,
  conditions: ['key-off', 'amp-uncovered', 'amp-outputs-off'],
  sensible: (f) =>
    !fuseStaysOut(f) &&
    is(f, 'speakers-unplugged', 'clears') &&
    !is(f, 'amp-wires-to-frame', 'shorted') &&
    !is(f, 'amp-runs', 'low') &&
    !is(f, 'bulb-to-frame', 'to-frame', 'across'),
  observes: ['run', 'speaker', 'amp'],
  cautions: ['key-off', 'into-a-short'],
  options: {
    one: 'One of them brings it back',
    each: 'Every one of them, even alone',
    together: 'Only all together, or only when louder',
    none: 'It no longer comes back',
  },
  outcomes: { one: 'one run trips it', each: 'every run trips it', together: 'only together', none: 'no longer trips' },
});
