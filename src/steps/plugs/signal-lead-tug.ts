import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const signalLeadTug: ChoiceStep<'holds' | 'wire' | 'pin'> = choice({
  place: 'plugs',
  id: 'signal-lead-tug',
  short: 'Wires of the signal lead, by hand',
  ask: 'Pull gently at every wire of the signal lead, at its plugs and at every joint: do all of them hold?',
  phone:
    'Follow the thin lead from the amplifier towards the radio as far as you can see it. Pull gently at each wire, at the plug and at every joint or tap. Do all of them hold? Has one come out, or does one stretch like rubber? Or does a pin slide out of the plug?',
  how: [
    'From the amplifier towards the head unit, as far as you can see it: its plug, every crimp, tap and splice, every bend.',
    'Two fingers, gently. Copper that broke inside lets its insulation stretch.',
  ],
  why: 'A tap that never bit, or copper that broke at a bend, stops the signal halfway. No setting brings it back.',
  tool: 'none',
  minutes: 5,
  conditions: ['key-off', 'amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && !is(f, 'amp-in', 'ok'),
  observes: ['unit-leads'],
  options: {
    holds: 'All of them hold',
    wire: 'One came out of its joint, or stretches',
    pin: 'A pin slides in its plug',
  },
  outcomes: { holds: 'all wires hold', wire: 'a wire out of its joint', pin: 'a pin slides' },
});
