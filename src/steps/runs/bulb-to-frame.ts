import { mayProtectItself } from '../amplifier/seen-on.ts';
import { is, isKnown } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

/** Tells a wire on the frame from a pair that is shorted, for whoever has no meter. */
export const bulbToFrame: ChoiceStep<'to-frame' | 'across' | 'clear'> = choice({
  place: 'runs',
  id: 'bulb-to-frame',
  short: 'Cell and torch bulb to the frame',
  ask: 'A 1.5 V cell and a torch bulb in series, speaker plugs off: does the bulb light from a wire to bare frame, or fully across a pair?',
  phone:
    'One 1.5 volt cell and a torch bulb in series, never 9 volt: from each speaker wire to a bare bolt, does it light at all? Then across each pair: as bright as with its ends held together, dimmer, or dark?',
  how: [
    'You need a torch bulb for one 1.5 V cell, and two leads. Hold their ends together once: that is full brightness.',
    'One end on bright bare metal of the frame, the other on each speaker wire you unplugged, half a second each.',
    'Then across the two wires of each pair, half a second: as bright as with the ends held together, dimmer, or dark?',
    'No bulb? Put the cell in series with a spare speaker instead. A click counts as light.',
  ],
  why: 'A wire on the frame and two wires touching both trip an output. A bulb tells them apart without a meter.',
  tool: 'cell',
  minutes: 6,
  conditions: ['key-off', 'amp-outputs-off', 'rear-off-unit'],
  sensible: (f) =>
    !is(f, 'which-corner', 'thin') &&
    (f.outcome('which-amp') === undefined || mayProtectItself(f)) &&
    !(isKnown(f, 'wire-to-frame') && isKnown(f, 'run-ohms')) &&
    !(isKnown(f, 'amp-wires-to-frame') && isKnown(f, 'amp-runs')),
  observes: ['run', 'speaker'],
  options: {
    'to-frame': 'It lights from a wire to the frame',
    across: 'Dark to the frame, and at full brightness across a pair',
    clear: 'Dark to the frame, and dimmer or dark across every pair',
  },
  outcomes: { 'to-frame': 'a wire touches the frame', across: 'a pair is shorted', clear: 'neither touches' },
  ifCannot: 'No cell or no bulb? Without it we plug the speakers back in one at a time.',
});
