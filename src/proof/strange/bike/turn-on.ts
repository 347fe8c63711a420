import { turnsOnBy, withAmp } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { between, type Oddity } from '../oddity.ts';
import { type Change, harmless } from './harmless.ts';

const byWire = turnsOnBy('wire');
const remote = ({ amps, about }: World) =>
  amps.flatMap(({ remoteSourceOhm, remotePin, remoteWire }, i) =>
    i === about ? [{ remoteSourceOhm }, remotePin, remoteWire] : [],
  );

/** With the 2.2 kΩ of a remote input these lose 1.2 to 1.8 V of 12.6 V. */
const drops: Change = (world, draw) => withAmp(world, { remoteSourceOhm: between(draw, 230, 370) });
const feedsThroughDiode = harmless(remote, drops);

export const TURN_ON: readonly Oddity[] = [
  {
    id: 'remote-drops',
    says: 'a remote wire behind a diode or a relay driver, which loses 1.5 V and works',
    class: 'turn-on',
    fits: (world) => byWire(world) && feedsThroughDiode(world),
    bike: drops,
  },
];
