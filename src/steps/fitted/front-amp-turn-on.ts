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
    'A remote wire sits on a small terminal beside the thick ones.',
    'No such wire: the amplifier listens to its inputs. Its papers say whether for a signal or for DC.',
  ],
  why: 'A wire that carries no volts and an input that hears nothing leave the same dark lamp. They are looked for in different places.',
  tool: 'none',
  minutes: 1,
  sensible: (f) => is(f, 'which-amp', 'front'),
  observes: [],
  options: { wire: 'By a remote wire', signal: 'By hearing a signal', dc: 'By sensing DC on its inputs' },
  outcomes: { wire: 'a remote wire', signal: 'hearing a signal', dc: 'sensing DC' },
  ifCannot: 'We take it as one that listens until a reading says otherwise.',
  article: 'amplifiers-that-listen',
  known: (rig) => ampDriving(rig, 'front')?.turnOn,
  learn: (turnOn, rig) => withAmpKnown(rig, 'front', { turnOn }),
});
