import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { KnownAmp, Rig } from '../../src/rig/rig.ts';

/* Twenty fixed builds, all with rear speakers: made up, each of a kind that workshops see. */

const FRAME = EXAMPLE_RIGS['frame-fairing'];
const AMP: KnownAmp = FRAME.amps[0];
const TRUNK_REAR: KnownAmp = EXAMPLE_RIGS.trunk.amps[1];

const NO_AMP: Rig = { ...FRAME, frontFedBy: 'unit', rearFedBy: 'unit', amps: [] };
const onBoth = (amp: KnownAmp, bike: Rig = {}): Rig => ({
  ...FRAME,
  ...bike,
  amps: [{ ...AMP, ...amp, drives: 'both' }],
});
const onRear = (amp: KnownAmp, bike: Rig = {}): Rig => ({
  ...FRAME,
  frontFedBy: 'unit',
  ...bike,
  amps: [{ ...AMP, ...amp, drives: 'rear' }],
});

export const TWENTY_RIGS: Readonly<Record<string, Rig>> = {
  'no amplifier, built with two': NO_AMP,
  'no amplifier, built with four': { ...NO_AMP, deliveredWith: 'four' },
  'no amplifier, replaced unit': { ...NO_AMP, unitKind: 'replaced' },
  'no amplifier, 2 Ω speakers, long thin run': {
    ...NO_AMP,
    rearRatedOhm: 2,
    frontRatedOhm: 2,
    rearRunM: 3.5,
    rearRunM2: 0.82e-6,
  },
  'no amplifier, two speakers on a channel': { ...NO_AMP, rearPerChannel: 2, rearWiring: 'parallel' },
  'front and rear on one amplifier by wire': FRAME,
  'the same, built with four': { ...FRAME, deliveredWith: 'four' },
  'the same, replaced unit': { ...FRAME, unitKind: 'replaced' },
  'front and rear on one amplifier that listens': onBoth({ turnOn: 'signal' }),
  'front and rear on one made for the unaltered output': onBoth({ turnOn: 'signal', needs: 'unaltered' }),
  'everything from the front pair': onBoth({ fedFrom: 'front' }),
  'everything from the front pair, line level': onBoth({ fedFrom: 'front', input: 'line' }, { unitKind: 'replaced' }),
  'amplifier on the rear only, by wire': onRear({}),
  'the same, line level, replaced unit': onRear({ input: 'line' }, { unitKind: 'replaced' }),
  'one that listens, replaced unit': onRear({ turnOn: 'signal' }, { unitKind: 'replaced', deliveredWith: 'four' }),
  'amplifier on the rear only that listens': onRear({ turnOn: 'signal' }),
  'the same, made for the unaltered output': onRear(
    { turnOn: 'signal', needs: 'unaltered' },
    { deliveredWith: 'four' },
  ),
  'amplifier on the rear only that senses DC': onRear(
    { turnOn: 'dc' },
    { rearPerChannel: 2, rearWiring: 'series', rearRatedOhm: 2 },
  ),
  'trunk on an amplifier of its own that listens, 2 Ω': EXAMPLE_RIGS.trunk,
  'trunk on an amplifier of its own by wire, 2 Ω': {
    ...EXAMPLE_RIGS.trunk,
    amps: [EXAMPLE_RIGS.trunk.amps[0], { ...TRUNK_REAR, turnOn: 'wire' }],
  },
};
