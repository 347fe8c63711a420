import { ampDriving, withAmpKnown } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { rearAmpMayBeThere } from './amp-there.ts';

export const rearAmpTurnOn: RigStep<'wire' | 'signal' | 'dc'> = rigQuestion({
  place: 'fitted',
  id: 'rear-amp-turn-on',
  short: 'Amplifier switched by',
  ask: 'How is the amplifier switched on?',
  phone: 'Is there a thin wire on the amplifier marked remote, or does it wake by itself when it hears music?',
  how: [
    'A remote wire goes to a small terminal next to the thick ones.',
    'No such wire: the amplifier wakes by what is on its inputs. Its papers say whether by sound or by DC.',
  ],
  why: 'One that wakes by sound stays off when the head unit’s rear outputs are silent. One with a remote wire does not care.',
  tool: 'none',
  minutes: 1,
  sensible: (f) => rearAmpMayBeThere(f) && !is(f, 'which-amp', 'cannot'),
  observes: [],
  givenUnder: ['rear-drive', 'amps-drive'],
  options: { wire: 'By a remote wire', signal: 'By sound on its inputs', dc: 'By DC on its inputs' },
  outcomes: { wire: 'a remote wire', signal: 'sound on its inputs', dc: 'DC on its inputs' },
  ifCannot: 'We keep both in mind, and look for a remote wire.',
  article: 'amplifiers-that-listen',
  known: (rig) => ampDriving(rig, 'rear')?.turnOn,
  learn: (turnOn, rig) => withAmpKnown(rig, 'rear', { turnOn }),
});
