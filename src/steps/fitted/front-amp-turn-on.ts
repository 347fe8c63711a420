import { ampDriving, withAmpKnown } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const frontAmpTurnOn: RigStep<'wire' | 'signal' | 'dc'> = rigQuestion({
  place: 'fitted',
  id: 'front-amp-turn-on',
  short: 'Front amplifier switched by',
  ask: 'How is the front amplifier switched on?',
  phone: 'Is there a thin wire on the front amplifier marked remote, or does it wake by itself when it hears music?',
  how: [
    'A remote wire goes to a small terminal next to the thick ones.',
    'No such wire: the amplifier wakes by what is on its inputs. Its papers say whether by sound or by DC.',
  ],
  why: 'A dead remote wire and an input with nothing on it leave the same dark light. You look for them in different places.',
  tool: 'none',
  minutes: 1,
  sensible: (f) => is(f, 'which-amp', 'front'),
  observes: [],
  options: { wire: 'By a remote wire', signal: 'By sound on its inputs', dc: 'By DC on its inputs' },
  outcomes: { wire: 'a remote wire', signal: 'sound on its inputs', dc: 'DC on its inputs' },
  ifCannot: 'We assume it wakes by sound until a reading says otherwise.',
  article: 'amplifiers-that-listen',
  known: (rig) => ampDriving(rig, 'front')?.turnOn,
  learn: (turnOn, rig) => withAmpKnown(rig, 'front', { turnOn }),
});
