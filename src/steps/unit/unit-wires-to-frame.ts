import { is } from '../outcome.ts';
import { ohmReading } from '../runs/ohms.ts';
import { judgeToFrame, TO_FRAME_FORMULA, toFrameBands } from '../runs/to-frame.ts';
import { measurement, type ReadingStep } from '../step.ts';

/** Whether a speaker wire that leaves the head unit is joined to ground, wherever that is. */
export const unitWiresToFrame: ReadingStep<'clear' | 'joined' | 'unclear'> = measurement({
  place: 'unit',
  id: 'unit-wires-to-frame',
  short: 'Head unit’s speaker wires to the frame',
  ask: 'What is the lowest reading from any speaker wire in the head unit’s plug to the frame?',
  phone:
    'The wiring diagram shows which are the speaker wires: without it leave the plug alone, and say so. One probe on a bare bolt of the frame, the other on each of them on the bike’s side, one after the other. What is the lowest number, or does it beep?',
  how: [
    'Find the speaker wires in the bike’s half of the plug on the wiring diagram: two for each corner.',
    'One probe on bright bare metal of the frame, the other on each of them. “OL” is the good one.',
    'One reads low? Unplug whatever was added, an adapter or a converter at the amplifier, and read again.',
  ],
  why: 'Both wires of a pair sit at half the supply. One on ground makes the head unit shut down all its outputs, or kills one.',
  tool: 'meter',
  minutes: 8,
  conditions: ['key-off', 'panel-off', 'unit-plug-apart', 'meter-on-ohms'],
  // A dark head unit has no outputs to switch off.
  sensible: (f) => !is(f, 'unit-screen', 'dark'),
  observes: ['unit-leads', 'run'],
  // The drawing shows the run of a speaker, and on a bike with an amplifier these wires end before it.
  probes: 'not drawn',
  readings: { lowestOhm: ohmReading('Lowest of its wires') },
  bands: () => toFrameBands('joined'),
  judge: (values) => judgeToFrame(values, 'joined'),
  formula: TO_FRAME_FORMULA,
  healthy: () => 'Healthy is above 100 kΩ or OL on every wire. Below 100 Ω, or a beep, one is joined to ground.',
  outcomes: { clear: 'clear of the frame', joined: 'one is joined to ground', unclear: 'unclear, perhaps damp' },
  article: 'half-the-supply-on-a-speaker-wire',
});
