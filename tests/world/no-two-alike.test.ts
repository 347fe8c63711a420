import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CORNERS, cornersOf, perCorner } from '../../src/rig/corner.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ampNodes, BATTERY_PLUS } from '../../src/world/bike/nodes.ts';
import { powerV } from '../../src/world/bike/operate.ts';
import { withAmp, withRuns, withSupply, withUnit } from '../../src/world/change.ts';
import { healthyWorld, OPEN } from '../../src/world/healthy.ts';
import { hear } from '../../src/world/hear.ts';
import type { Moment } from '../../src/world/moment.ts';
import { dcV, type Look, ohms } from '../../src/world/probe.ts';
import type { World } from '../../src/world/state.ts';
import { COMPLAINTS, ridden } from '../../src/world/symptoms/index.ts';
import { ground, spotOf } from '../../src/world/test-points.ts';
import { expectClose } from '../compute/close.ts';
import { evenly } from '../compute/evenly.ts';
import { anyBike, at, look, pairV, there, value } from './bikes.ts';

/* What differs from one sound bike to the next. Ranges are estimates, from memory of the trade. */

const ON_AMP: Rig = EXAMPLE_RIGS['frame-fairing'];
const ON_UNIT: Rig = { ...ON_AMP, frontFedBy: 'unit', rearFedBy: 'unit', deliveredWith: 'four', amps: [] };
const healthy = healthyWorld(ON_AMP);
const unitBike = healthyWorld(ON_UNIT);
const QUIET = { toneHz: null } as const;

describe('the lamp of an amplifier with too few volts', () => {
  const lamps = (change: Parameters<typeof withAmp>[1], moment: Partial<Moment> = {}) =>
    (['off', 'blinks', 'fault'] as const).map(
      (lampBelow) => at(withAmp(withAmp(healthy, change), { lampBelow }), moment).amps[0]?.lamp,
    );
  it('is dark, blinks or says fault, as it was made', () => {
    expect(lamps({ ring: { ohm: 3 } })).toEqual(['off', 'blinks', 'fault']);
  });
  it('is dark whatever it was made for when nothing tells it to be on, or nothing is there', () => {
    expect(lamps({ ring: { ohm: 3 } }, { key: 'off' })).toEqual(['off', 'off', 'off']);
    expect(lamps({ ring: { ohm: 3 }, remoteWire: OPEN })).toEqual(['off', 'off', 'off']);
    expect(lamps({ fuseOpen: true })).toEqual(['off', 'off', 'off']);
  });
  it('shows the same of a supply that was never enough: 8 V', () => {
    const low = (lampBelow: 'off' | 'blinks') =>
      at(withSupply(withAmp(healthy, { lampBelow }), { openV: 9.7 })).amps[0];
    expect(low('blinks')?.supplyV).toBeLessThan(10.2);
    expect([low('off')?.lamp, low('blinks')?.lamp]).toEqual(['off', 'blinks']);
  });
  it('is nothing that a sound bike shows', () => expect(lamps({})).toEqual(['normal', 'normal', 'normal']));
});

describe('residue of the head unit’s outputs', () => {
  const noisy = withUnit(unitBike, { residueV: 0.05 });
  const rearV = (seen: Look) => pairV(seen, 'unit-rear-plus', 'unit-rear-minus');
  it('is read with no tone on, on all pairs, also on those that the profile switches off', () => {
    expectClose(rearV(look(noisy, QUIET)), 0.05, 0.02);
    expectClose(pairV(look(noisy, QUIET), 'unit-front-plus', 'unit-front-minus'), 0.05, 0.02);
    expectClose(rearV(look(withUnit(noisy, { rearOn: false }), QUIET)), 0.05, 0.02);
    expectClose(rearV(look(withUnit(noisy, { rearOn: false }), {})), 0.05, 0.02);
  });
  it('adds to a tone as power does: 0.05 V to 0.5 V are 0.5025 V', () => {
    const half = { volumeRatio: (0.05 * 0.5) / rearV(look(unitBike, { volumeRatio: 0.05 })) };
    expectClose(rearV(look(unitBike, half)), 0.5, 0.02);
    expectClose(rearV(look(noisy, half)) / rearV(look(unitBike, half)), Math.hypot(1, 0.1), 2e-3);
  });
  it('is gone where the wire is: behind an open plug, and with the unit off', () => {
    const open = withRuns(noisy, ['rear-left'], { dock: OPEN });
    expect(pairV(look(open, QUIET), 'speaker-plus', 'speaker-minus')).toBeLessThan(1e-3);
    expect(rearV(look(noisy, { ...QUIET, key: 'off' }))).toBe(0);
  });
  it('is heard by nobody', () => {
    const seen = look(noisy, QUIET);
    expect(hear(seen.world, seen.moment, seen.now)).toEqual(hear(unitBike, seen.moment, at(unitBike, QUIET)));
  });
});

describe('rest volts of the head unit', () => {
  const restV = (world: World, axle: 'front' | 'rear') => {
    const seen = look(world, QUIET);
    return value(dcV(seen, there(spotOf(`unit-${axle}-plus`, world, 'rear-left')), ground('unit'))) / seen.now.unitV;
  };
  it('are the share of its supply that it was made for', () => {
    fc.assert(
      fc.property(evenly(0.38, 0.56), (restRatio) => {
        expectClose(restV(withUnit(unitBike, { restRatio }), 'rear'), restRatio, 1e-3);
      }),
    );
  });
  it('stand on channels that are switched off, or do not, as it was made', () => {
    const off = withUnit(unitBike, { rearOn: false });
    expectClose(restV(off, 'rear'), 0.475, 1e-3);
    const dead = withUnit(off, { restsWhenOff: false });
    expect(restV(dead, 'rear')).toBeLessThan(0.01);
    expectClose(restV(dead, 'front'), 0.475, 1e-3);
    // Switched on, they rest as all do.
    expectClose(restV(withUnit(dead, { rearOn: true }), 'rear'), 0.475, 1e-3);
  });
});

describe('outputs that are no two alike', () => {
  it('give each corner its share of the level, from 0.7 to 1', () => {
    fc.assert(
      fc.property(fc.constantFrom(...CORNERS), evenly(0.7, 1), (corner, ratio) => {
        const world = withUnit(unitBike, { levelRatio: { ...perCorner(() => 1), [corner]: ratio } });
        for (const other of CORNERS) {
          const [ours, sound] = [world, unitBike].map((it_) => pairV(look(it_), 'run-plus', 'run-minus', other));
          expectClose((ours ?? 0) / (sound ?? 1), other === corner ? ratio : 1, 1e-6);
        }
      }),
    );
  });
});

describe('damp between a speaker wire and the frame', () => {
  const damp = (ohm: number) => withRuns(unitBike, ['rear-left'], { toFrame: { ohm } });
  it('is read as its ohms with everything unplugged', () => {
    for (const ohm of [100, 3_000, 100_000]) {
      const seen = look(damp(ohm), { key: 'off', toneHz: null, apart: ['runs'] });
      expectClose(value(ohms(seen, there(spotOf('run-plus', seen.world, 'rear-left')), ground('unit'))), ohm, 1e-2);
    }
  });
  it('changes nothing that is heard, and no output protects itself from it', () => {
    const [wet, dry] = [damp(100), unitBike].map((world) => look(world));
    if (!wet || !dry) expect.fail('no look');
    expect(wet.now.unit.protects).toEqual([]);
    const levels = [wet, dry].map((seen) => hear(seen.world, seen.moment, seen.now)['rear-left']);
    expectClose(levels[0]?.powerW ?? 0, levels[1]?.powerW ?? 1, 0.01);
    expect(levels[0]?.noisy).toBe(false);
  });
});

describe('a battery fresh off the charger', () => {
  const fresh = withSupply(healthy, { openV: 12.2, surfaceV: 0.6 });
  const postsV = (world: World, moment: Partial<Moment>) => powerV(at(world, moment), BATTERY_PLUS);
  it('shows its surface charge at rest and with the key on, and none of it under a lamp', () => {
    const plain = withSupply(fresh, { surfaceV: 0 });
    const asleep = { key: 'off', toneHz: null } as const;
    expectClose(postsV(fresh, asleep) - postsV(plain, asleep), 0.6, 0.01);
    expectClose(postsV(fresh, QUIET) - postsV(plain, QUIET), 0.6, 0.03);
    const lamp = { ...QUIET, lamp: true };
    expectClose(postsV(fresh, lamp), postsV(plain, lamp), 1e-9);
  });
});

describe('a cold battery', () => {
  it('has twice the ohms at −20 °C, and the same as ever when it is warm', () => {
    const dropOhm = (batteryC: number) => {
      const world = withSupply(healthy, { batteryC });
      const now = at(world, { ...QUIET, lamp: true });
      return (world.supply.openV - powerV(now, BATTERY_PLUS)) / -now.power.currentA('battery').re;
    };
    expectClose(dropOhm(20), healthy.supply.internalOhm, 1e-6);
    expectClose(dropOhm(-20) / dropOhm(20), 2, 1e-6);
    expectClose(dropOhm(35), dropOhm(20), 1e-9);
  });
});

describe('a lamp on the terminals of an amplifier', () => {
  // A path of 3.15 Ω leaves 4 V of 12.6 V: see the filament. With 0.9 V for the rest of the bike a little less is left.
  it('draws more than the ohms of full light say where it is dim', () => {
    const now = at(withAmp(healthy, { ring: { ohm: 3.1 } }), { ...QUIET, key: 'off', lamp: true });
    const { plus, ground: minus } = ampNodes(0);
    const volts = powerV(now, plus, minus);
    expectClose(volts, 4, 0.05);
    expectClose(now.power.currentA('lamp 0').re, 5 * (volts / 12) ** 0.55, 1e-3);
  });
});

describe('a sound bike unlike any other', () => {
  it('has no complaint of silence, whatever it is like', () => {
    const strange = fc.record({
      restRatio: evenly(0.38, 0.56),
      residueV: evenly(0, 0.05),
      ratios: fc.tuple(evenly(0.7, 1), evenly(0.7, 1), evenly(0.7, 1), evenly(0.7, 1)),
      dampOhm: evenly(2, 5),
      surfaceV: evenly(0, 0.6),
      batteryC: evenly(-10, 35),
      lampBelow: fc.constantFrom('off', 'blinks', 'fault'),
      restsWhenOff: fc.boolean(),
    });
    fc.assert(
      fc.property(
        anyBike,
        strange,
        (rig, { restRatio, residueV, ratios, dampOhm, surfaceV, batteryC, lampBelow, restsWhenOff }) => {
          const sound = healthyWorld(rig);
          const levelRatio = Object.fromEntries(
            CORNERS.map((corner, i) => [corner, ratios[i] ?? 1]),
          ) as World['unit']['levelRatio'];
          const world = withAmp(
            withRuns(
              withSupply(withUnit(sound, { restRatio, residueV, levelRatio, restsWhenOff }), { surfaceV, batteryC }),
              cornersOf('rear'),
              { toFrame: { ohm: 10 ** dampOhm } },
            ),
            { lampBelow },
          );
          for (const complaint of [
            'no-rear-sound',
            'rear-weak',
            'amp-wont-turn-on',
            'one-speaker-or-side-dead',
            'no-sound-at-all',
          ] as const) {
            expect([complaint, COMPLAINTS[complaint](ridden(world))]).toEqual([complaint, 'no']);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
