import { measurement, type ReadingStep } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { concernsAxle } from '../told/silent-side.ts';
import { ohmReading } from './ohms.ts';
import { judgeToFrame, TO_FRAME_FORMULA, toFrameBands } from './to-frame.ts';

/** Whether any speaker wire of an axle touches the frame. */
export const wireToFrame: OfEach<ReadingStep<'clear' | 'shorted' | 'unclear'>, 'rear', 'front'> = ofEach(
  ['rear', 'front'],
  (axle) =>
    measurement({
      place: 'runs',
      id: 'wire-to-frame',
      short: axle === 'rear' ? 'Speaker wires to the frame' : 'Front speaker wires to the frame',
      ask: `Plug apart: what is the lowest reading from any ${axle} speaker wire to the frame?`,
      phone: `One probe on a bare bolt of the frame, the other on each ${axle} speaker wire in turn. What is the lowest number, or does it beep?`,
      how: [
        'One probe on bright bare metal of the frame, the other on each of the four wires in turn.',
        `Move ${axle === 'rear' ? 'lids, steering and seat' : 'the steering and the fairing'}. Type the lowest reading. “OL” is the good one.`,
      ],
      why: 'A speaker wire on the frame shorts half a bridge output to ground. The output then shuts down, or dies.',
      tool: 'meter',
      minutes: 6,
      conditions: ['key-off', `${axle}-plug-apart`, 'meter-on-ohms'],
      sensible: (f) => concernsAxle(f, axle),
      observes: ['run'],
      probes: { red: 'run-plus', black: 'frame' },
      readings: { lowestOhm: ohmReading('Lowest of the four wires') },
      bands: () => toFrameBands('touching'),
      judge: (values) => judgeToFrame(values, 'shorted'),
      formula: TO_FRAME_FORMULA,
      healthy: () => 'Healthy is above 100 kΩ or OL on every wire. Below 100 Ω, or a beep, a wire touches.',
      outcomes: { clear: 'clear of the frame', shorted: 'a wire touches the frame', unclear: 'unclear, perhaps damp' },
    }),
);
