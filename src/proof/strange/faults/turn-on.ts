import { decades, turnsOnBy, withAmp, withUnit } from '../../../world/faults/kit.ts';
import { SOUND } from '../../../world/healthy.ts';
import { type StrangeFault, seenAs, withPast } from './strange-fault.ts';

/* Of what switches head unit and amplifier. */

/** Without the amplifier on it a bad joint drops nothing. */
const wireOff = seenAs(['remote-volts'], (world) => withAmp(world, { remoteWire: SOUND }));

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
  withPast(
    {
      id: 'remote-crimped-on-insulation',
      title: 'A crimp of the remote wire on its insulation, read with the wire off its terminal',
      // A meter alone reads nearly the whole battery there, and the 2.2 kΩ of a remote input leave a volt or less of it.
      severity: decades('crimpOhm', 15_000, 60_000),
      weights: { 'amp-wont-turn-on': 3 },
      rightCauses: ['remote-wire-open'],
      fits: turnsOnBy('wire'),
      apply: (world, ohm) => withAmp(world, { remoteWire: { ohm, wants: 'wire' } }),
      person: wireOff,
    },
    { before: { never: 3 }, lastChange: { fitted: 4 } },
  ),
];
