import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gainTargetV } from '../../src/compute/gain.ts';
import { halfSupplyBandV } from '../../src/compute/half-supply.ts';
import { boostClipsAtV } from '../../src/compute/headroom.ts';
import { runBandOhm } from '../../src/compute/impedance.ts';
import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV, powerW } from '../../src/compute/level.ts';
import { toneRatio } from '../../src/compute/profile-response.ts';
import { copperResistanceOhm, dropV } from '../../src/compute/wire.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { cleanIntoV, clip, shownRatio } from '../../src/world/bike/clip.ts';
import { ampNodes, BATTERY_PLUS, MINUS } from '../../src/world/bike/nodes.ts';
import { powerV } from '../../src/world/bike/operate.ts';
import { CORNERS, cornersOf } from '../../src/world/corner.ts';
import { FULL_STEP_V, healthyWorld } from '../../src/world/healthy.ts';
import { hear, playing } from '../../src/world/hear.ts';
import { acV, dcA, dcV, type Look, ohms } from '../../src/world/probe.ts';
import type { Spot } from '../../src/world/test-points.ts';
import { ground, powerSpot, spotOf } from '../../src/world/test-points.ts';
import { driverOf, isFitted } from '../../src/world/valued-rig.ts';
import { expectClose } from '../compute/close.ts';
import { evenly } from '../compute/evenly.ts';
import { at, exampleRig, look, usualRig } from './bikes.ts';

const there = (spot: Spot | null): Spot => {
  if (!spot) throw new Error('no such place on this bike');
  return spot;
};
const value = (read: ReturnType<typeof dcV>) => {
  if (!read.ok) throw new Error(read.reason);
  return read.value;
};
const pairV = (seen: Look, plus: Parameters<typeof spotOf>[0], minus: Parameters<typeof spotOf>[0]) =>
  value(acV(seen, there(spotOf(plus, seen.world, 'rear-left')), there(spotOf(minus, seen.world, 'rear-left'))));
const anyBike = fc.oneof(exampleRig, usualRig);
const loudOn = { averageRatio: 1, volumeRatio: 1 } as const;

describe('a healthy bike', () => {
  it('plays at every corner that it has, with every amplifier awake, whatever is fitted', () => {
    fc.assert(
      fc.property(anyBike, (rig) => {
        const world = healthyWorld(rig);
        const now = at(world);
        const fitted = CORNERS.filter((corner) => isFitted(world.rig, corner));
        expect(playing(hear(world, look(world).moment, now))).toEqual(fitted);
        for (const corner of fitted) {
          const driver = driverOf(world.rig, corner);
          if (driver !== 'unit') expect(now.amps[driver]?.lamp).toBe('normal');
        }
      }),
    );
  });
  it('is silent and draws only what sleeps with the key off', () => {
    fc.assert(
      fc.property(anyBike, (rig) => {
        const world = healthyWorld(rig);
        const seen = look(world, { key: 'off' });
        expect(playing(hear(world, seen.moment, seen.now))).toEqual([]);
        expect(seen.now.unitOn).toBe(false);
        expect(-value(dcA(seen, 'battery'))).toBeLessThan(0.03);
      }),
    );
  });
});

describe('the circuit agrees with the formulas', () => {
  it('of half the supply, on every wire of the unit, enabled or not', () => {
    fc.assert(
      fc.property(anyBike, (rig) => {
        const seen = look(healthyWorld(rig), { toneHz: null });
        const { lowV, highV } = halfSupplyBandV({ supplyV: seen.now.unitV });
        for (const point of ['unit-front-plus', 'unit-rear-minus'] as const) {
          const volts = value(dcV(seen, there(spotOf(point, seen.world, 'rear-left')), ground('unit')));
          expect(volts).toBeGreaterThan(lowV);
          expect(volts).toBeLessThan(highV);
        }
      }),
    );
  });
  // The figure of a made-up but common build: 8.49 V, 18 W, at 14.2 V into 4 Ω.
  it('of the clean output: 8.49 V and 18 W into 4 Ω at 14.2 V, 1 dB more into an input', () => {
    expectClose(cleanIntoV({ supplyV: 14.2, loadOhm: 4 }), 8.485, 1e-4);
    expectClose(powerW({ levelV: cleanIntoV({ supplyV: 14.2, loadOhm: 4 }), loadOhm: 4 }), 18, 1e-3);
    fc.assert(
      fc.property(evenly(9, 16), (supplyV) => {
        const loaded = cleanIntoV({ supplyV, loadOhm: 4 });
        expectClose(loaded, cleanOutputV({ supplyV, lossV: BRIDGE_LOSS_LOADED_V }));
        expectClose(
          cleanIntoV({ supplyV, loadOhm: Infinity }),
          cleanOutputV({ supplyV, lossV: BRIDGE_LOSS_UNLOADED_V }),
        );
        expect(cleanIntoV({ supplyV, loadOhm: 2 })).toBeLessThan(loaded);
      }),
    );
  });
  it('of a wire: the amplifier misses what its leads, at its current, drop by the formula', () => {
    fc.assert(
      fc.property(usualRig, (rig) => {
        const world = healthyWorld(rig);
        const now = at(world, loudOn);
        world.amps.forEach(({ plusLead }, i) => {
          const currentA = Math.max(0, now.power.currentA(`plus lead ${i}`).re);
          const { fuseOut, plus } = ampNodes(i);
          const { lengthM, sectionM2 } = plusLead;
          const resistanceOhm = copperResistanceOhm({ lengthM, sectionM2 });
          expectClose(powerV(now, fuseOut, plus) + 1, dropV({ currentA, resistanceOhm }) + 1);
        });
      }),
    );
  });
  it('of a run: ohms at its plug lie in the band of coil plus wires, on any build', () => {
    fc.assert(
      fc.property(anyBike, (rig) => {
        const world = healthyWorld({ ...rig, rearFitted: 'yes' });
        const seen = look(world, { key: 'off', apart: ['runs'], toneHz: null });
        const { rearRatedOhm, rearPerChannel, rearWiring, rearRunM, rearRunM2 } = world.rig;
        const { lowOhm, highOhm } = runBandOhm({
          ratedOhm: rearRatedOhm,
          count: rearPerChannel,
          wiring: rearWiring,
          wireLengthM: rearRunM,
          wireSectionM2: rearRunM2,
        });
        const ohm = value(
          ohms(seen, there(spotOf('run-plus', world, 'rear-left')), there(spotOf('run-minus', world, 'rear-left'))),
        );
        expect(ohm).toBeGreaterThan(lowOhm);
        expect(ohm).toBeLessThan(highOhm);
      }),
    );
  });
  it('of a gain: the loudest clean input gives the rated volts at the output, the target of the formula', () => {
    const { amps: _, ...none } = EXAMPLE_RIGS['frame-fairing'];
    fc.assert(
      fc.property(evenly(40, 150), fc.constantFrom(2, 4), evenly(6, 8), (watts, ratedOhm, loweredByDb) => {
        const amp = { ...EXAMPLE_RIGS['frame-fairing'].amps[0], powerW: watts, ratedOhm };
        const world = healthyWorld({ ...none, loweredByDb, amps: [amp] });
        const seen = look(world, { ...loudOn, engine: 'cruise', apart: ['runs'], toneHz: 1000 });
        const target = gainTargetV({ powerW: watts, loadOhm: ratedOhm });
        expectClose(pairV(seen, 'amp-out-plus', 'amp-out-minus'), target, 5e-3);
      }),
    );
  });
  it('of a profile: 80 over 400 Hz at the front pair is its tone ratio, engine off and running', () => {
    fc.assert(
      fc.property(anyBike, fc.constantFrom('off', 'idle', 'cruise'), (rig, engine) => {
        const world = healthyWorld(rig);
        const pairAtV = (toneHz: number) =>
          pairV(look(world, { toneHz, engine, volumeRatio: 0.05 }), 'unit-front-plus', 'unit-front-minus');
        const expected = toneRatio({
          profile: world.unit.profile,
          toneHz: 80,
          referenceHz: 400,
          engineRunning: engine !== 'off',
        });
        // The output's own 20 mΩ take up to 1.3 % at 400 Hz, where a 2 Ω coil is heaviest.
        expectClose(pairAtV(80) / pairAtV(400), expected, 2e-2);
      }),
    );
  });
});

describe('a wave that a supply cuts off', () => {
  it('reads 1.11 of its peak on an average-reading meter when it is nearly a square', () => {
    expectClose((clip(1e5, 8.5).cleanV * shownRatio(clip(1e5, 8.5), 'average')) / (8.5 * Math.SQRT2), 1.1107, 1e-3);
  });
  it('is left alone below the limit', () => {
    expect(clip(3, 8.5)).toEqual({ cleanV: 3, overdriveDb: 0 });
    expect(shownRatio(clip(3, 8.5), 'average')).toBe(1);
  });
  it('starts where the formula for a boost says: 13 dB of boost clip 13 dB before the rest', () => {
    fc.assert(
      fc.property(evenly(12, 14), evenly(12.2, 12.9), (boostDb, supplyOffV) => {
        const world = healthyWorld({ ...EXAMPLE_RIGS['fork-fairing'], boostDb, supplyOffV });
        const { unitV, loadsOhm } = at(world);
        const cleanV = cleanIntoV({ supplyV: unitV, loadOhm: loadsOhm['front-left'] });
        const overdriveDb = (share: number) => {
          const volumeRatio = (share * boostClipsAtV({ cleanV, boostDb })) / FULL_STEP_V;
          return at(world, { toneHz: 80, volumeRatio }).unit.waves['front-left'].overdriveDb;
        };
        expect(overdriveDb(0.99)).toBe(0);
        expect(overdriveDb(1.01)).toBeGreaterThan(0);
      }),
    );
  });
});

describe('the supply of a loud amplifier', () => {
  // 90 W a channel at 75 %: four channels are 480 W in, 33 to 40 A, on leads of 7.3 and 2.9 mΩ: 0.24 and 0.10 V at 33 A.
  it('drops some hundred millivolts in sound leads, plus and ground each as its ohms', () => {
    const now = at(healthyWorld(EXAMPLE_RIGS['frame-fairing']), { ...loudOn, engine: 'cruise' });
    const currentA = now.power.currentA('plus lead 0').re;
    const { plus, ground: minus } = ampNodes(0);
    expect(currentA).toBeGreaterThan(30);
    expect(currentA).toBeLessThan(45);
    expectClose(powerV(now, BATTERY_PLUS, plus) / currentA, 7.8e-3, 0.05);
    expectClose(powerV(now, minus, MINUS) / currentA, 2.85e-3, 0.05);
  });
  it('splits into what plus lead, amplifier and ground lead take: V1 = V2 + V3 + V4', () => {
    fc.assert(
      fc.property(anyBike, fc.constantFrom('off', 'idle', 'cruise'), (rig, engine) => {
        const now = at(healthyWorld(rig), { ...loudOn, engine });
        now.amps.forEach(({ supplyV }, i) => {
          const { plus, ground: minus } = ampNodes(i);
          expectClose(powerV(now, BATTERY_PLUS), supplyV + powerV(now, BATTERY_PLUS, plus) + powerV(now, minus));
        });
      }),
    );
  });
  it('settles within a few passes', () => {
    fc.assert(
      fc.property(anyBike, fc.constantFrom('off', 'idle', 'cruise'), evenly(0, 1.5), (rig, engine, volumeRatio) => {
        expect(at(healthyWorld(rig), { engine, volumeRatio }).passes).toBeLessThan(10);
      }),
    );
  });
});

describe('ohms', () => {
  const world = healthyWorld(EXAMPLE_RIGS['frame-fairing']);
  const across = (seen: Look) =>
    ohms(seen, there(spotOf('run-plus', world, 'rear-left')), there(spotOf('run-minus', world, 'rear-left')));
  it('are refused on a run that plays', () => expect(across(look(world))).toEqual({ ok: false, reason: 'powered' }));
  it('are refused on a paused run that hangs on an awake output', () => {
    expect(across(look(world, { toneHz: null }))).toEqual({ ok: false, reason: 'powered' });
  });
  it('are refused on the supply', () => {
    expect(ohms(look(world), powerSpot(BATTERY_PLUS), ground('power'))).toEqual({ ok: false, reason: 'powered' });
  });
  it('read open from a wire of a sound run to the frame', () => {
    const seen = look(world, { key: 'off', apart: ['runs'], toneHz: null });
    expect(ohms(seen, there(spotOf('run-plus', world, 'rear-left')), ground('power'))).toEqual({
      ok: true,
      value: Infinity,
    });
  });
  it('read the coil alone at the speaker with one wire off', () => {
    const seen = look(world, { key: 'off', apart: ['tabs'], toneHz: null });
    const coil = ohms(
      seen,
      there(spotOf('speaker-plus', world, 'rear-left')),
      there(spotOf('speaker-minus', world, 'rear-left')),
    );
    expectClose(value(coil), world.speakers['rear-left'].coilOhm, 1e-3);
  });
});

describe('a probe', () => {
  it('finds every test point of the steps on a bike with an amplifier, and no amplifier on one without', () => {
    const [withAmp, without] = [EXAMPLE_RIGS['frame-fairing'], EXAMPLE_RIGS['fork-fairing']].map(healthyWorld);
    if (!withAmp || !without) throw new Error('two examples');
    for (const corner of cornersOf('rear')) {
      for (const point of ['unit-rear-plus', 'amp-in-minus', 'amp-out-plus', 'run-minus', 'speaker-plus'] as const) {
        const { where, node } = there(spotOf(point, withAmp, corner));
        const now = at(withAmp);
        const solution = where === 'unit' ? now.unit.dc : now.amps[Number(where)]?.side.dc;
        expect(solution?.has(node), `${point} at ${node}`).toBe(true);
      }
    }
    expect(spotOf('amp-in-plus', without, 'rear-left')).toBeNull();
    expect(spotOf('run-plus', without, 'rear-left')).toBeNull();
  });
  it('cannot read between an amplifier’s output and a battery post: no lead of a step does', () => {
    const world = healthyWorld(EXAMPLE_RIGS['frame-fairing']);
    const seen = look(world);
    const out = there(spotOf('amp-out-plus', world, 'rear-left'));
    expect(dcV(seen, out, powerSpot(BATTERY_PLUS))).toEqual({ ok: false, reason: 'apart' });
  });
});
