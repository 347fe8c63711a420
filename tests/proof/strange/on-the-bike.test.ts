import { describe, expect, it } from 'vitest';
import { drawFrom } from '../../../src/observe/draw.ts';
import { ODDITIES, oddRider } from '../../../src/proof/strange/index.ts';
import { CORNERS, sideOf } from '../../../src/rig/corner.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { withUnit } from '../../../src/world/change.ts';
import { healthyWorld } from '../../../src/world/healthy.ts';
import type { World } from '../../../src/world/state.ts';
import { ridden } from '../../../src/world/symptoms/index.ts';
import { careful, saidBy } from './bikes.ts';

/* What is odd about outputs and lamps is a thing of the bike, and the readings follow from it. */

const SOUND = healthyWorld(EXAMPLE_RIGS['frame-fairing']);
const oddity = (id: string) => ODDITIES.find((one) => one.id === id) ?? expect.fail(`no oddity ${id}`);
/** Many bikes that have it. */
const having = (id: string, world: World = SOUND): readonly World[] =>
  Array.from({ length: 60 }, (_, i) => oddity(id).bike?.(world, drawFrom(id, i)) ?? expect.fail(`${id} is no bike's`));

function expectWithin(values: readonly number[], low: number, high: number): void {
  expect(Math.min(...values)).toBeGreaterThanOrEqual(low);
  expect(Math.max(...values)).toBeLessThanOrEqual(high);
  // And not all the same.
  expect(Math.max(...values) - Math.min(...values)).toBeGreaterThan(0.5 * (high - low));
}

describe('an odd output of the head unit', () => {
  it('leaves 30 to 80 mV', () => {
    expectWithin(
      having('unit-residue').map(({ unit }) => unit.residueV),
      0.03,
      0.08,
    );
  });
  it('rests at 0.40 to 0.55 of its supply, its wires 0.1 to 0.45 V apart, one way or the other', () => {
    const bikes = having('rest-unequal');
    expectWithin(
      bikes.map(({ unit }) => unit.restRatio),
      0.4,
      0.55,
    );
    const apartV = bikes.flatMap(({ unit }) => Object.values(unit.outputDcV));
    expectWithin(
      apartV.map((volts) => Math.abs(volts)),
      0.1,
      0.45,
    );
    expect(new Set(apartV.map((volts) => Math.sign(volts)))).toEqual(new Set([-1, 1]));
  });
  it('adds to the DC of one that is damaged, and does not hide it', () => {
    const damaged = withUnit(SOUND, ({ outputDcV }) => ({ outputDcV: { ...outputDcV, 'rear-left': 3 } }));
    for (const { unit } of having('rest-unequal', damaged)) expect(unit.outputDcV['rear-left']).toBeGreaterThan(2.5);
  });
  it('gives 0.6 to 0.88 on one side of half of the bikes', () => {
    const uneven = having('sides-unequal').filter((world) => world !== SOUND);
    expect(uneven.length).toBeGreaterThan(15);
    expect(uneven.length).toBeLessThan(45);
    const weaker = uneven.map(({ unit }) => CORNERS.filter((corner) => unit.levelRatio[corner] !== 1));
    for (const corners of weaker) {
      expect(corners.length).toBe(2);
      expect(new Set(corners.map(sideOf)).size).toBe(1);
    }
    expectWithin(
      uneven.map(({ unit }) => Math.min(...Object.values(unit.levelRatio))),
      0.6,
      0.88,
    );
  });
  it('that is switched off rests at nothing, or that is dead: the bike has the one, and the other is told', () => {
    const said = (world: World) => saidBy(oddRider(careful, [oddity('rest-nothing-when-off')], 's'), ridden(world));
    const off = withUnit(SOUND, { rearOn: false });
    for (const world of having('rest-nothing-when-off', off).slice(0, 2)) {
      const { readings } = said(world).get('half-supply') as { readings: Readonly<Record<string, string>> };
      expect(Number.parseFloat(readings['plusV'] ?? '')).toBeLessThan(0.1);
    }
    const dead = withUnit(SOUND, { deadChannels: ['rear-left'] });
    expect(said(dead).get('half-supply')).toMatchObject({ readings: { plusV: '0.02 V', minusV: '0.02 V' } });
  });
});

describe('an odd lamp', () => {
  it('shows its fault, or blinks, at low volts', () => {
    const lamps = having('lamp-red-at-low-volts').map(({ amps }) => amps[0]?.lampBelow);
    expect(new Set(lamps)).toEqual(new Set(['fault', 'blinks']));
  });
});
