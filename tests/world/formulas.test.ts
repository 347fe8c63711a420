import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampCurrentA } from '../../src/compute/amp-current.ts';
import {
  REMOTE_ON_HIGHEST_V,
  REMOTE_ON_LOWEST_V,
  SENSE_DC_HIGHEST_V,
  SENSE_DC_LOWEST_V,
  UNDERVOLTAGE_CUT_HIGHEST_V,
  UNDERVOLTAGE_CUT_LOWEST_V,
} from '../../src/compute/amp-supply.ts';
import { voltageRatio } from '../../src/compute/decibel.ts';
import { gainRatio, gainTargetV } from '../../src/compute/gain.ts';
import { HALF_SUPPLY_PAIR_DIFFERENCE_V, halfSupplyBandV } from '../../src/compute/half-supply.ts';
import { boostClipsAtV } from '../../src/compute/headroom.ts';
import { parallelOhm, runBandOhm, seriesOhm } from '../../src/compute/impedance.ts';
import {
  BRIDGE_LOSS_LOADED_V,
  BRIDGE_LOSS_UNLOADED_V,
  cleanOutputV,
  FULL_STEP_V,
  powerW,
} from '../../src/compute/level.ts';
import { AMPLIFIED_SAME_SHAPE, toneRatio, UNALTERED_SHAPE } from '../../src/compute/profile-response.ts';
import { copperResistanceOhm, dropV } from '../../src/compute/wire.ts';
import { CORNERS, type Corner } from '../../src/rig/corner.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { EFFICIENCY_RATIO } from '../../src/steps/supply/amp-feed.ts';
import { cleanIntoV } from '../../src/world/bike/clip.ts';
import { ampGainRatio } from '../../src/world/bike/drive.ts';
import { ampIn, ampNodes } from '../../src/world/bike/nodes.ts';
import { HUNTS_WITHIN_RATIO, MOST_PASSES, powerV, SETTLED_W } from '../../src/world/bike/operate.ts';
import { AMP_IDLE_A } from '../../src/world/bike/power.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { dcV, ohms } from '../../src/world/probe.ts';
import { ground, spotOf } from '../../src/world/test-points.ts';
import { driverOf } from '../../src/world/valued-rig.ts';
import { expectClose, ROUNDING } from '../compute/close.ts';
import { evenly } from '../compute/evenly.ts';
import { anyBike, at, look, pairV, there, usualRig, value } from './bikes.ts';

/*
 * No band has a second copy: what a step calls healthy comes from `src/compute`, and the circuit, which knows nothing of
 * the bands, has to land where those formulas say, over any healthy bike.
 */

const FRAME = EXAMPLE_RIGS['frame-fairing'];
const loudOn = { averageRatio: 1, volumeRatio: 1 } as const;
/** Outputs have some milliohms of their own: a 2 Ω coil takes up to 1.3 % of the tone there. */
const OUTPUT_TAKES = 2e-2;
const frontV = (seen: ReturnType<typeof look>, corner: Corner = 'front-left') =>
  pairV(seen, 'unit-front-plus', 'unit-front-minus', corner);

describe('the circuit agrees with the formula', () => {
  it('of half the supply: every wire of the unit lies in the band, both of a pair alike, enabled or not', () => {
    fc.assert(
      fc.property(anyBike, fc.constantFrom(...CORNERS), fc.boolean(), (rig, corner, rearOn) => {
        const healthy = healthyWorld(rig);
        const seen = look({ ...healthy, unit: { ...healthy.unit, rearOn } }, { toneHz: null });
        const { lowV, highV } = halfSupplyBandV({ supplyV: seen.now.unitV });
        const axle = corner.startsWith('front') ? 'front' : 'rear';
        const [plusV = 0, minusV = 0] = (['plus', 'minus'] as const).map((sign) =>
          value(dcV(seen, there(spotOf(`unit-${axle}-${sign}`, seen.world, corner)), ground('unit'))),
        );
        for (const volts of [plusV, minusV]) {
          expect(volts).toBeGreaterThan(lowV);
          expect(volts).toBeLessThan(highV);
        }
        expect(Math.abs(plusV - minusV)).toBeLessThan(HALF_SUPPLY_PAIR_DIFFERENCE_V);
      }),
    );
  });

  // The figure of a made-up but common build: 8.49 V, 18 W, at 14.2 V into 4 Ω.
  it('of the full clean output: 8.49 V and 18 W into 4 Ω at 14.2 V', () => {
    expectClose(cleanIntoV({ supplyV: 14.2, loadOhm: 4 }), 8.485, 1e-4);
    expectClose(powerW({ levelV: cleanIntoV({ supplyV: 14.2, loadOhm: 4 }), loadOhm: 4 }), 18, 1e-3);
  });
  it('of the full clean output: a unit turned up too far leaves so much of its wave uncut, as its load lets it', () => {
    fc.assert(
      fc.property(anyBike, fc.constantFrom('off', 'idle'), (rig, engine) => {
        const { unit, unitV, loadsOhm } = at(healthyWorld(rig), { toneHz: 400, volumeRatio: 4, engine });
        const clean = (lossV: number) => cleanOutputV({ supplyV: unitV, lossV });
        const { cleanV, overdriveDb } = unit.waves['front-left'];
        if (overdriveDb === 0) return;
        expect(cleanV).toBeLessThanOrEqual(clean(BRIDGE_LOSS_UNLOADED_V));
        const hangs = driverOf(healthyWorld(rig).rig, 'front-left') === 'unit';
        if (!hangs) expectClose(cleanV, clean(BRIDGE_LOSS_UNLOADED_V), 1e-3);
        else if (loadsOhm['front-left'] >= 4) expect(cleanV).toBeGreaterThanOrEqual(clean(BRIDGE_LOSS_LOADED_V));
      }),
    );
  });

  it('of the level: a lowered profile gives so many decibels less than a full one at the same step', () => {
    fc.assert(
      fc.property(evenly(3, 10), evenly(0.02, 0.5), (loweredByDb, volumeRatio) => {
        const world = healthyWorld({ ...FRAME, loweredByDb });
        const levelAt = (levelDb: number) => {
          const profile = { ...AMPLIFIED_SAME_SHAPE, levelDb };
          return frontV(look({ ...world, unit: { ...world.unit, profile } }, { toneHz: 1000, volumeRatio }));
        };
        expectClose(frontV(look(world, { toneHz: 1000, volumeRatio })), levelAt(-loweredByDb));
        expectClose(levelAt(-loweredByDb) / levelAt(0), voltageRatio({ gainDb: -loweredByDb }), 1e-6);
        expectClose(levelAt(0), FULL_STEP_V * volumeRatio, 1e-3);
      }),
    );
  });
  it('of the boost: 80 over 400 Hz at the front pair is the tone ratio of the profile, engine off and running', () => {
    fc.assert(
      fc.property(anyBike, fc.constantFrom('off', 'idle', 'cruise'), evenly(12, 14), (rig, engine, boostDb) => {
        const healthy = healthyWorld({ ...rig, boostDb });
        const profiles = [healthy.unit.profile, { ...UNALTERED_SHAPE, boostDb }];
        for (const profile of profiles) {
          const world = { ...healthy, unit: { ...healthy.unit, profile } };
          const pairAtV = (toneHz: number) => frontV(look(world, { toneHz, engine, volumeRatio: 0.05 }));
          const expected = toneRatio({ profile, toneHz: 80, referenceHz: 400, engineRunning: engine !== 'off' });
          expectClose(pairAtV(80) / pairAtV(400), expected, OUTPUT_TAKES);
        }
      }),
    );
  });
  it('of where a boost clips: 13 dB of boost clip 13 dB before the rest', () => {
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

  it('of a run: coils as they are joined, positive two lengths of wire, positive some milliohms of contacts', () => {
    const joined = fc.constantFrom(
      { rearWiring: 'single', rearPerChannel: 1 } as const,
      { rearWiring: 'parallel', rearPerChannel: 2 } as const,
      { rearWiring: 'series', rearPerChannel: 3 } as const,
    );
    fc.assert(
      fc.property(anyBike, joined, fc.constantFrom(2, 4, 8), (rig, speakers, rearRatedOhm) => {
        const world = healthyWorld({ ...rig, ...speakers, rearRatedOhm, rearFitted: 'yes' });
        const seen = look(world, { key: 'off', apart: ['runs'], toneHz: null });
        const {
          rearRunM: wireLengthM,
          rearRunM2: wireSectionM2,
          rearPerChannel: count,
          rearWiring: wiring,
        } = world.rig;
        const places = (['run-plus', 'run-minus'] as const).map((point) => there(spotOf(point, world, 'rear-left')));
        const ohm = value(ohms(seen, ...(places as [(typeof places)[0], (typeof places)[0]])));
        const { lowOhm, highOhm } = runBandOhm({ ratedOhm: rearRatedOhm, count, wiring, wireLengthM, wireSectionM2 });
        expect(ohm).toBeGreaterThan(lowOhm);
        expect(ohm).toBeLessThan(highOhm);
        const { coilOhm } = world.speakers['rear-left'];
        const coils = Array.from({ length: count }, () => coilOhm);
        const coilsOhm = wiring === 'parallel' ? parallelOhm(coils) : seriesOhm(coils);
        const wireOhm = copperResistanceOhm({ lengthM: 2 * wireLengthM, sectionM2: wireSectionM2 });
        expect(ohm - coilsOhm - wireOhm).toBeGreaterThan(0);
        expect(ohm - coilsOhm - wireOhm).toBeLessThan(0.02);
      }),
    );
  });

  it('of a gain: output over input is the gain, filters included, at any tone below clipping', () => {
    fc.assert(
      fc.property(usualRig, fc.constantFrom(80, 400, 1000, 4000), evenly(0.01, 0.1), (rig, toneHz, volumeRatio) => {
        const world = healthyWorld({ ...rig, rearFitted: 'yes', rearFedBy: 'amp' });
        const i = driverOf(world.rig, 'rear-left');
        const amp = typeof i === 'number' ? world.amps[i] : undefined;
        const seen = look(world, { toneHz, volumeRatio, apart: ['amp-outputs'] });
        if (!amp || typeof i !== 'number' || seen.now.amps[i]?.lamp !== 'normal') return;
        const inputV = pairV(seen, 'amp-in-plus', 'amp-in-minus');
        const outputV = pairV(seen, 'amp-out-plus', 'amp-out-minus');
        expectClose(gainRatio({ outputV, inputV }), ampGainRatio(amp, 'rear', toneHz), 1e-5);
      }),
    );
  });
  it('of a gain target: the loudest clean input gives the rated volts at the output', () => {
    const { amps: _, ...none } = FRAME;
    fc.assert(
      fc.property(evenly(40, 150), fc.constantFrom(2, 4), evenly(6, 8), (watts, ratedOhm, loweredByDb) => {
        const amp = { ...FRAME.amps[0], powerW: watts, ratedOhm };
        const world = healthyWorld({ ...none, loweredByDb, amps: [amp] });
        const seen = look(world, { ...loudOn, engine: 'cruise', apart: ['runs'], toneHz: 1000 });
        const target = gainTargetV({ powerW: watts, loadOhm: ratedOhm });
        expectClose(pairV(seen, 'amp-out-plus', 'amp-out-minus'), target, 5e-3);
      }),
    );
  });

  it('of a wire: the amplifier misses what its leads, at its current, drop', () => {
    fc.assert(
      fc.property(usualRig, (rig) => {
        const world = healthyWorld(rig);
        const now = at(world, loudOn);
        world.amps.forEach(({ plusLead, groundLead }, i) => {
          const { fuseOut, plusEnd, ground: minus, groundRing } = ampNodes(i);
          const drops = [
            [`positive lead ${i}`, powerV(now, fuseOut, plusEnd), plusLead],
            [`ground lead ${i}`, powerV(now, minus, groundRing), groundLead],
          ] as const;
          for (const [lead, lostV, { lengthM, sectionM2 }] of drops) {
            const currentA = Math.abs(now.power.currentA(lead).re);
            const resistanceOhm = copperResistanceOhm({ lengthM, sectionM2 });
            expectClose(Math.abs(lostV) + 1, dropV({ currentA, resistanceOhm }) + 1);
          }
        });
      }),
    );
  });
  it('of the current of an amplifier: its average output over efficiency and supply, and its idle current on top', () => {
    fc.assert(
      fc.property(usualRig, fc.constantFrom(1 / 8, 1 / 3, 1), evenly(0.1, 1), (rig, averageRatio, volumeRatio) => {
        const { amps, power, passes } = at(healthyWorld(rig), { averageRatio, volumeRatio, engine: 'cruise' });
        const huntsRatio = passes === MOST_PASSES ? HUNTS_WITHIN_RATIO : 0;
        amps.forEach(({ why, supplyV, side }, i) => {
          if (why !== null || side.outputW < 1) return;
          const currentA = ampCurrentA({
            powerW: side.outputW,
            channels: 1,
            efficiencyRatio: EFFICIENCY_RATIO,
            supplyV,
            averageRatio: 1,
          });
          // Watts may still move that much when a bike counts as settled; in current that is this much.
          const settledA = SETTLED_W / EFFICIENCY_RATIO / supplyV;
          const drawnA = power.currentA(`amp ${i}`).re;
          expectClose(drawnA, AMP_IDLE_A + currentA, huntsRatio + settledA / drawnA + ROUNDING);
        });
      }),
    );
  });
});

describe('what switches an amplifier lies within what makers choose', () => {
  const withAmp = (rig: Rig, part: object) => {
    const world = healthyWorld(rig);
    return { ...world, amps: world.amps.map((amp) => ({ ...amp, ...part })) };
  };
  /** Off below the least, on above the most; in between it is this amplifier's own affair. */
  const expectBetween = (isOn: boolean, volts: number, [leastV, mostV]: readonly [number, number]) => {
    if (volts < leastV) expect(isOn, `${volts} V`).toBe(false);
    if (volts > mostV) expect(isOn, `${volts} V`).toBe(true);
  };
  it('at its remote terminal', () => {
    fc.assert(
      fc.property(evenly(0, 4), (decades) => {
        const now = at(withAmp(FRAME, { remoteSourceOhm: 10 ** decades }));
        const { remote, ground: minus } = ampNodes(0);
        const band = [REMOTE_ON_LOWEST_V, REMOTE_ON_HIGHEST_V] as const;
        expectBetween(now.amps[0]?.lamp === 'normal', powerV(now, remote, minus), band);
      }),
    );
  });
  it('at its positive and ground', () => {
    fc.assert(
      fc.property(evenly(-2, 2), (decades) => {
        const now = at(withAmp(FRAME, { ring: { ohm: 10 ** decades } }), { toneHz: null });
        const isOn = now.amps[0]?.lamp === 'normal';
        const volts = now.amps[0]?.supplyV ?? 0;
        // One that fell is read without its current: it would fall again, so only what stays on counts.
        if (isOn) expect(volts).toBeGreaterThan(UNDERVOLTAGE_CUT_LOWEST_V);
        else expect(volts - AMP_IDLE_A * 10 ** decades).toBeLessThan(UNDERVOLTAGE_CUT_HIGHEST_V);
      }),
    );
  });
  it('at the inputs of one that senses DC', () => {
    const amp = { ...FRAME.amps[0], turnOn: 'dc' } as const;
    fc.assert(
      fc.property(evenly(2, 6), (decades) => {
        const plug = { ohm: 10 ** decades };
        const inputPlug = Object.fromEntries(CORNERS.map((corner) => [corner, { plus: plug, minus: plug }]));
        const now = at(withAmp({ ...FRAME, amps: [amp] }, { inputPlug }), { toneHz: null });
        const volts = now.unit.dc.acrossV([ampIn(0, 'front-left', '+'), ampNodes(0).ground]).re;
        expectBetween(now.amps[0]?.lamp === 'normal', volts, [SENSE_DC_LOWEST_V, SENSE_DC_HIGHEST_V]);
      }),
    );
  });
  it('and each of them was reached from both sides', () => {
    const lamps = [10, 1e4].map((remoteSourceOhm) => at(withAmp(FRAME, { remoteSourceOhm })).amps[0]?.lamp);
    expect(lamps).toEqual(['normal', 'off']);
    const rings = [0.01, 10].map((ohm) => at(withAmp(FRAME, { ring: { ohm } })).amps[0]?.lamp);
    expect(rings).toEqual(['normal', 'off']);
  });
});
