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
    'A remote wire sits on a small terminal beside the thick ones.',
    'No such wire: the amplifier listens to its inputs. Its papers say whether for a signal or for DC.',
  ],
  why: 'An amplifier that listens stays off when the rear outputs of the head unit are silent. One with a wire does not care.',
  tool: 'none',
  minutes: 1,
  sensible: (f) => rearAmpMayBeThere(f) && !is(f, 'which-amp', 'cannot'),
  observes: [],
  options: { wire: 'By a remote wire', signal: 'By hearing a signal', dc: 'By sensing DC on its inputs' },
  outcomes: { wire: 'a remote wire', signal: 'hearing a signal', dc: 'sensing DC' },
  ifCannot: 'We keep both in mind, and look for a remote wire.',
  article: 'amplifiers-that-listen',
  known: (rig) => ampDriving(rig, 'rear')?.turnOn,
  learn: (turnOn, rig) => withAmpKnown(rig, 'rear', { turnOn }),
});
