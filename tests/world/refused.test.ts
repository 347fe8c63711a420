import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { operate } from '../../src/world/bike/operate.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { type Moment, ORDINARY } from '../../src/world/moment.ts';
import type { World } from '../../src/world/state.ts';

const FRAME: Rig = EXAMPLE_RIGS['frame-fairing'];
const [AMP] = EXAMPLE_RIGS['frame-fairing'].amps;
const NO_AMP: Rig = { ...FRAME, frontFedBy: 'unit', rearFedBy: 'unit', amps: [] };

const refusalOf = (rig: Rig, moment: Partial<Moment> = {}, change: (world: World) => World = (world) => world) => {
  const now = operate(change(healthyWorld(rig)), { ...ORDINARY, ...moment });
  return now.ok ? null : now.refusal;
};
const badValue = (element: string, value: string) => ({ reason: 'bad-value', element, value });
const amp = (part: object): Rig => ({ ...FRAME, amps: [{ ...AMP, ...part }] });

describe('an impossible bike is refused by name, before it is solved', () => {
  it.each<[string, Rig, object]>([
    ['no battery', { ...FRAME, batteryAh: 0 }, { reason: 'no-battery' }],
    ['a battery below zero', { ...FRAME, batteryAh: -20 }, badValue('battery', 'internalOhm -0.02')],
    ['a positive lead without length', amp({ plusLeadM: 0 }), badValue('positive lead 0', 'lengthM 0')],
    ['a positive lead without copper', amp({ plusLeadM2: 0 }), badValue('positive lead 0', 'sectionM2 0')],
    ['a main fuse for no current', amp({ mainFuseA: 0 }), badValue('fuse 0', 'ratedA 0')],
    ['a speaker run without length', { ...FRAME, rearRunM: 0 }, badValue('wire front-left +', 'lengthM 0')],
    ['the same without an amplifier', { ...NO_AMP, rearRunM: 0 }, badValue('wire front-left +', 'lengthM 0')],
    [
      'a speaker below zero ohms',
      { ...NO_AMP, rearRatedOhm: -4 },
      badValue('coil rear-left 0 coil', 'resistanceOhm -3.3'),
    ],
    ['a speaker of no ohms', { ...FRAME, rearRatedOhm: 0 }, badValue('coil rear-left 0 coil', 'resistanceOhm 0')],
  ])('%s', (_, rig, refusal) => expect(refusalOf(rig)).toMatchObject(refusal));

  it('charging that takes current', () => {
    const rig = { ...FRAME, chargingIdleA: -5 };
    expect(refusalOf(rig, { engine: 'idle' })).toMatchObject(badValue('charging', 'limitA -5'));
  });
  it('a contact of a negative resistance', () => {
    const withRing = (world: World) => ({ ...world, amps: world.amps.map((one) => ({ ...one, ring: { ohm: -1 } })) });
    expect(refusalOf(FRAME, {}, withRing)).toMatchObject(badValue('ring 0', 'resistanceOhm -1'));
  });
  it('and the sound ones are not', () => {
    for (const rig of [FRAME, NO_AMP])
      for (const engine of ['off', 'idle'] as const) {
        expect(refusalOf(rig, { engine })).toBeNull();
      }
  });
});
