import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../src/causes/all.ts';
import { uglyAt } from '../../src/observe/ugly.ts';
import { CORNERS } from '../../src/rig/corner.ts';
import { causeOfFault } from '../../src/survey/survey-of.ts';
import { FAULTS, type Fault, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { beside, mirror } from '../../src/world/mirror.ts';
import { withRepairs } from '../../src/world/repair.ts';
import { COMPLAINTS, ridden } from '../../src/world/symptoms/index.ts';
import { heardCorners } from '../../src/world/symptoms/symptom.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';
import { anyBike } from './bikes.ts';
import { CURES } from './repair/cures.ts';

/** Some of the twenty: without an amplifier, with one for all, one for the rear, one fed from the front pair. */
const FEW_RIGS = Object.values(TWENTY_RIGS).filter((_, i) => i % 6 === 0);
const onTheRight = FAULTS.filter(({ side }) => side === 'right');
const twinOf = ({ id, variant = '' }: Fault): Fault =>
  FAULTS.find((other) => other.id === id && (other.variant ?? '') === variant.replace(/-?right$/, '')) ??
  expect.fail('no twin');

describe('a speaker that is rough while its partner is clean', () => {
  it('is as often on the right, and heard there', () => {
    const rough = onTheRight.filter(({ weights }) => weights['distortion-at-volume'] !== undefined);
    expect(new Set(rough.map(({ id }) => id))).toEqual(
      new Set(['amp-channel-rough', 'coil-rubbing-or-cone-torn', 'speaker-mount-loose']),
    );
    for (const rig of FEW_RIGS) {
      const healthy = healthyWorld(rig);
      for (const fault of rough.filter((one) => one.fits(healthy))) {
        expect(fault.weights['distortion-at-volume'], keyOf(fault)).toBe(twinOf(fault).weights['distortion-at-volume']);
        const ugly = (one: Fault) => uglyAt(ridden(one.apply(healthy, severityAt(one, 0.5))));
        expect(ugly(fault), keyOf(fault)).toEqual(ugly(twinOf(fault)).map(beside));
      }
    }
  });
});

describe('a bike in a mirror', () => {
  it('is the same bike after twice, whatever is wrong with it', () => {
    const healthy = healthyWorld(TWENTY_RIGS[Object.keys(TWENTY_RIGS)[0] as string] ?? {});
    for (const fault of FAULTS.filter((one) => one.fits(healthy))) {
      const world = fault.apply(healthy, severityAt(fault, 0.5));
      expect(mirror(mirror(world)), keyOf(fault)).toEqual(world);
    }
  });
  it('is sound where it was sound', () => {
    fc.assert(
      fc.property(anyBike, (rig) => {
        const world = healthyWorld(rig);
        expect(mirror(world)).toEqual(world);
      }),
      { numRuns: 20 },
    );
  });
  it('is heard with left for right', () => {
    for (const rig of FEW_RIGS) {
      const healthy = healthyWorld(rig);
      for (const fault of onTheRight.filter((one) => one.fits(healthy))) {
        const [left, right] = [twinOf(fault), fault].map((one) => ridden(one.apply(healthy, severityAt(one, 0.5))));
        if (!left || !right) expect.fail('no bike');
        const plays = heardCorners(right, right.at({}));
        const before = heardCorners(left, left.at({}));
        expect(plays, keyOf(fault)).toEqual(CORNERS.filter((corner) => before.includes(beside(corner))));
      }
    }
  });
});

describe('a speaker that is silent, or weak, beside one that plays', () => {
  it('is no complaint of a sound bike', () => {
    for (const rig of Object.values(TWENTY_RIGS)) {
      const bike = ridden(healthyWorld(rig));
      expect([COMPLAINTS['one-speaker-or-side-dead'](bike), COMPLAINTS['one-side-weak'](bike)]).toEqual(['no', 'no']);
    }
  });
  it('is never both at once, and neither is a rear that is silent on both sides', () => {
    for (const rig of FEW_RIGS) {
      const healthy = healthyWorld(rig);
      for (const fault of FAULTS.filter((one) => one.side !== 'right' && one.fits(healthy))) {
        const bike = ridden(fault.apply(healthy, severityAt(fault, 0.5)));
        const all = (['one-speaker-or-side-dead', 'one-side-weak', 'no-rear-sound', 'rear-weak'] as const).filter(
          (complaint) => COMPLAINTS[complaint](bike) === 'yes',
        );
        expect(all.length, `${keyOf(fault)} ${all}`).toBeLessThan(2);
      }
    }
  });
  it('has the same cause on the right as on the left', () => {
    for (const fault of onTheRight)
      expect(causeOfFault(CAUSES, fault)?.id, keyOf(fault)).toBe(causeOfFault(CAUSES, twinOf(fault))?.id);
  });
  it('is cured on the right by what cures it on the left', () => {
    for (const rig of FEW_RIGS.slice(0, 2)) {
      const healthy = healthyWorld(rig);
      for (const fault of onTheRight.filter((one) => one.fits(healthy))) {
        const world = withRepairs(fault.apply(healthy, severityAt(fault, 0.5)), CURES[keyOf(fault)]?.(healthy) ?? []);
        expect(COMPLAINTS['one-speaker-or-side-dead'](ridden(world)), keyOf(fault)).toBe('no');
        expect(COMPLAINTS['one-side-weak'](ridden(world)), keyOf(fault)).toBe('no');
      }
    }
  });
  it('is as often on one side as on the other', () => {
    for (const fault of onTheRight)
      for (const complaint of ['one-speaker-or-side-dead', 'one-side-weak'] as const)
        expect(fault.weights[complaint], keyOf(fault)).toBe(twinOf(fault).weights[complaint]);
  });
});
