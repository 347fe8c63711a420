import { ampDriving, withAmpKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { rearAmpMayBeThere } from './amp-there.ts';

export const rearAmpInput: RigStep<'speaker' | 'line'> = rigQuestion({
  place: 'fitted',
  id: 'rear-amp-input',
  short: 'Signal into the amplifier',
  ask: 'What feeds the amplifier: the head unit’s speaker wires, or a line-level lead?',
  phone:
    'Do the amplifier’s thin signal wires come from speaker wires, or is there a small round plug on a shielded lead?',
  how: [
    'Speaker wires: two plain wires per channel, into a plug or screws.',
    'Line level: a round plug on a shielded lead, from a converter or a line output.',
  ],
  why: 'The amplifier’s range must match what comes in, and only speaker wires carry half the supply as DC.',
  tool: 'none',
  minutes: 0.5,
  sensible: rearAmpMayBeThere,
  observes: [],
  givenUnder: ['rear-drive', 'amps-drive'],
  options: { speaker: 'Speaker wires', line: 'A line-level lead' },
  outcomes: { speaker: 'speaker wires', line: 'a line-level lead' },
  known: (rig) => ampDriving(rig, 'rear')?.input,
  learn: (input, rig) => withAmpKnown(rig, 'rear', { input }),
});
