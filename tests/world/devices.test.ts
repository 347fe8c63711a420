import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ampNodes, BATTERY_PLUS, UNIT_GROUND, UNIT_PLUS } from '../../src/world/bike/nodes.ts';
import { powerV } from '../../src/world/bike/operate.ts';
import { withAmp, withSupply, withUnit } from '../../src/world/change.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import type { Moment } from '../../src/world/moment.ts';
import { dcA, dcV } from '../../src/world/probe.ts';
import { screen } from '../../src/world/sights.ts';
import type { World } from '../../src/world/state.ts';
import { ground, powerSpot } from '../../src/world/test-points.ts';
import { expectClose } from '../compute/close.ts';
import { at, CONVERTER_RIGS, look, pairV, value } from './bikes.ts';

/* Head unit, amplifier, converter and battery, each with what can be wrong inside. */

const FRAME: Rig = EXAMPLE_RIGS['frame-fairing'];
const healthy = healthyWorld(FRAME);
const lampOf = (world: World, moment: Partial<Moment> = {}) => at(world, moment).amps[0]?.lamp;

describe('a lithium battery with a circuit that takes it off', () => {
  const weak = withSupply(healthy, ({ internalOhm }) => ({ cutOffV: 10.5, internalOhm: 4 * internalOhm }));
  const LOUD = { volumeRatio: 1, averageRatio: 1 } as const;
  it('is on at an ordinary level, and takes everything with it when the music pulls its posts under the limit', () => {
    expect(at(weak)).toMatchObject({ unitOn: true, state: { batteryOff: false } });
    const loud = at(weak, LOUD);
    expect(loud).toMatchObject({ unitOn: false, state: { batteryOff: true } });
    expect(loud.amps[0]?.lamp).toBe('off');
    expect(powerV(loud, BATTERY_PLUS)).toBeLessThan(0.1);
  });
  it('is there again where it has no such circuit, as soon as the amplifier has gone off', () => {
    expect(powerV(at(withSupply(weak, { cutOffV: null }), LOUD), BATTERY_PLUS)).toBeGreaterThan(12);
  });
  it('is off at rest when it is empty, and shows a few volts to a meter alone', () => {
    const empty = withSupply(healthy, { cutOffV: 10.5, openV: 9.8 });
    const asleep = look(empty, { key: 'off', toneHz: null });
    expect(asleep.now.state.batteryOff).toBe(true);
    const volts = value(dcV(asleep, powerSpot(BATTERY_PLUS), ground('power')));
    expect(volts).toBeGreaterThan(0);
    expect(volts).toBeLessThan(5);
  });
  it('leaves the charging system to carry the bike while the engine runs', () => {
    const running = at(withSupply(healthy, { cutOffV: 10.5, openV: 9.8 }), { engine: 'cruise' });
    expect(running.unitOn).toBe(true);
  });
});

describe('a head unit with its own fuse open', () => {
  it('is dark, with its feed there', () => {
    const now = at(withUnit(healthy, { fuseOpen: true }));
    expect(screen(healthy, now)).toBe('dark');
    expect(powerV(now, UNIT_PLUS, UNIT_GROUND)).toBeGreaterThan(12);
  });
});

describe('DC on an input of an amplifier', () => {
  const onRear = (world: World, volts: number) =>
    withUnit(world, ({ outputDcV }) => ({ outputDcV: { ...outputDcV, 'rear-left': volts } }));
  it('makes it protect itself, and the lamp turns normal when the signal plug is pulled', () => {
    const bad = onRear(healthy, 3);
    expect(at(bad).amps[0]).toMatchObject({ lamp: 'fault', why: 'dc' });
    expect(lampOf(bad, { apart: ['amp-outputs'] })).toBe('fault');
    expect(lampOf(bad, { apart: ['amp-inputs'] })).toBe('normal');
  });
  it('is nothing to one that a converter feeds: no DC comes through', () => {
    for (const rig of Object.values(CONVERTER_RIGS)) expect(lampOf(onRear(healthyWorld(rig), 3))).toBe('normal');
  });
  it('of a fifth of a volt is what sound outputs have, and no reason', () => {
    expect(lampOf(onRear(healthy, 0.2))).toBe('normal');
  });
});

describe('a converter that is dead', () => {
  it.each(Object.entries(CONVERTER_RIGS))('passes nothing, while the head unit plays into it: %s', (_, rig) => {
    const sound = look(healthyWorld(rig));
    const dead = look(withAmp(healthyWorld(rig), { converter: 'dead' }));
    const [inV, outV] = [sound, dead].map((seen) => pairV(seen, 'amp-in-plus', 'amp-in-minus'));
    expect(inV).toBeGreaterThan(0.05);
    expect(outV).toBeLessThan(1e-6);
    expectClose(
      pairV(dead, 'unit-rear-plus', 'unit-rear-minus'),
      pairV(sound, 'unit-rear-plus', 'unit-rear-minus'),
      1e-6,
    );
  });
  it('leaves one that listens asleep', () => {
    const listens = healthyWorld(CONVERTER_RIGS['front and rear on a converter, one that listens'] ?? {});
    expect(at(withAmp(listens, { converter: 'dead' })).amps[0]?.why).toBe('no-turn-on');
  });
});

describe('water in an amplifier', () => {
  const wet = (lamp: 'dark' | 'fault') => withAmp(healthy, { wet: lamp, shortInside: { ohm: 100 } });
  it('leaves it dark, or with its fault light lit while it is turned on', () => {
    expect(at(wet('dark')).amps[0]).toMatchObject({ lamp: 'off', why: 'dead' });
    expect(at(wet('fault')).amps[0]).toMatchObject({ lamp: 'fault', why: 'wet' });
    expect(lampOf(wet('fault'), { key: 'off' })).toBe('off');
  });
  it('draws from the battery day and night: 12.7 V over 100 Ω are 127 mA', () => {
    const asleep = { key: 'off', toneHz: null } as const;
    const drawn = (world: World) => -value(dcA(look(world, asleep), 'battery'));
    expectClose(drawn(wet('dark')) - drawn(healthy), 0.127, 0.01);
  });
});

describe('an amplifier that is driven far into clipping', () => {
  // The RMS of a square wave is its peak, that of a sine its peak over √2: twice the power into the same ohms.
  it('gives up to twice the power of the sine that fits, and draws for it', () => {
    const watts = (ratio: number) => {
      const world = withAmp(healthy, ({ gainRatio: { front, rear } }) => ({
        gainRatio: { front: ratio * front, rear: ratio * rear },
      }));
      return at(world, { volumeRatio: 0.5, engine: 'cruise' }).amps[0]?.side.outputW ?? Number.NaN;
    };
    const fits = watts(2);
    expectClose(fits / watts(1), 4, 0.02);
    expect(watts(4) / fits).toBeGreaterThan(1.3);
    expect(watts(1000) / fits).toBeGreaterThan(1.98);
    expect(watts(1000) / fits).toBeLessThan(2.01);
  });
});

describe('what lies on the ground of an amplifier', () => {
  it('is the current times its ohms, between its terminal and the battery negative post', () => {
    const now = at(withAmp(healthy, { groundRing: { ohm: 0.1 } }), { volumeRatio: 0.5 });
    const currentA = now.power.currentA('ground ring 0').re;
    const { groundRing, minusRing } = ampNodes(0);
    expectClose(powerV(now, groundRing, minusRing), 0.1 * currentA, 1e-6);
  });
});
