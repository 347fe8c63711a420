import { turnsOnBy, withAmp, withUnit } from '../../../world/faults/kit.ts';
import { SOUND } from '../../../world/healthy.ts';
import { type StrangeFault, withPast } from './strange-fault.ts';

/* Of what switches head unit and amplifier. */

export const STRANGE_TURN_ON: readonly StrangeFault[] = [
  withPast(
    {
      id: 'main-switch-opens-hot',
      title: 'A contact of the main switch that opens when it is hot',
      severity: null,
      weights: { 'cuts-out': 3 },
      rightCauses: ['unit-feed-missing'],
      fits: () => true,
      apply: (world) => withUnit(world, { switched: { ...SOUND, hotOhm: Infinity } }),
    },
    { before: { 'comes-and-goes': 8 } },
  ),
  withPast(
    {
      id: 'remote-on-the-horn',
      title: 'The remote wire on the circuit of the horn, live while it sounds',
      severity: null,
      weights: { 'amp-wont-turn-on': 2, 'no-rear-sound': 1 },
      rightCauses: ['remote-source-dead'],
      fits: turnsOnBy('wire'),
      apply: (world) => withAmp(world, { remoteSource: 'dead' }),
    },
    { before: { never: 6 }, lastChange: { fitted: 6, workshop: 2 } },
  ),
];
