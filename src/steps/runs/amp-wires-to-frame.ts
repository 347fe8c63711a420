import { mayProtectItself } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { measurement, type ReadingStep } from '../step.ts';
import { ohmReading } from './ohms.ts';
import { TO_FRAME_FORMULA } from './to-frame.ts';
import { wireToFrame } from './wire-to-frame.ts';

export const ampWiresToFrame: ReadingStep<'clear' | 'shorted' | 'unclear'> = measurement({
  place: 'runs',
  id: 'amp-wires-to-frame',
  short: 'Its speaker wires to the frame',
  ask: 'Plugs off: what is the lowest reading from any of this amplifier’s speaker wires to the frame, in ohms?',
  phone:
    'One probe on a bare bolt of the frame, the other on each speaker wire in turn. What is the lowest number, or does it beep?',
  how: [
    'Black probe on bare bright metal of the frame, red on each wire of each run in turn.',
    'Move lids, steering and seat while you watch. Type the lowest number; “OL” is a reading too.',
  ],
  why: 'No output wire may touch metal, neither positive nor negative: it shorts the output.',
  tool: 'meter',
  minutes: 6,
  conditions: ['key-off', 'amp-uncovered', 'amp-outputs-off', 'meter-on-ohms'],
  sensible: (f) => ampMayBeThere(f) && mayProtectItself(f),
  observes: ['run', 'speaker'],
  probes: { red: 'run-plus', black: 'frame' },
  readings: {
    lowestOhm: ohmReading('Lowest of all its speaker wires'),
  },
  bands: (reading, values, s) => wireToFrame.bands(reading, values, s),
  judge: (values, s) => wireToFrame.judge(values, s),
  formula: TO_FRAME_FORMULA,
  healthy: (values, s) => wireToFrame.healthy(values, s),
  outcomes: { clear: 'clear of the frame', shorted: 'a wire touches the frame', unclear: 'unclear, perhaps damp' },
});
