import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { FAULTS, severityAt, withFaults } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import type { Moment } from '../../src/world/moment.ts';
import { identityOf } from '../../src/world/remembered.ts';
import { type Ridden, ridden } from '../../src/world/symptoms/index.ts';
import { expectClose } from '../compute/close.ts';

const MOMENTS: readonly (readonly [string, Partial<Moment>])[] = [
  ['as found', {}],
  ['hot', { hot: true }],
  ['with lid and run moved', { moves: ['lid', 'rear-run'] }],
  ['loud with the engine running', { engine: 'idle', toneHz: 80, volumeRatio: 1 }],
  ['off and unplugged', { key: 'off', toneHz: null, apart: ['runs'] }],
];

const lamps = (bike: Ridden, moment: Partial<Moment>) => {
  const { now } = bike.at(moment);
  return now.ok ? now.amps.map(({ why, lamp }) => `${lamp} ${why}`) : now.refusal;
};

describe.each(Object.entries(EXAMPLE_RIGS))('what is remembered of the bikes of one build: %s', (_, rig) => {
  const shared = healthyWorld(rig);
  const faults = FAULTS.filter((fault) => fault.fits(shared)).map((fault) => [fault, severityAt(fault, 0.7)] as const);

  it.each(MOMENTS)('changes nothing of what a bike with any fault does, %s', (_when, moment) => {
    for (const one of faults) {
      const bike = ridden(withFaults(shared, [one]));
      const alone = ridden(withFaults(healthyWorld(rig), [one]));
      expect(lamps(bike, moment), one[0].id).toEqual(lamps(alone, moment));
      const [heard, heardAlone] = [bike.at(moment).heard, alone.at(moment).heard];
      for (const corner of bike.fitted)
        if (heard && heardAlone) expectClose(heard[corner].powerW, heardAlone[corner].powerW);
        else expect(heard).toEqual(heardAlone);
    }
  });
});

describe('identityOf', () => {
  const build = {};
  it('is the same for parts of the same values', () => {
    expect(identityOf(build, { ohm: 1 }, { ohm: 2 })).toBe(identityOf(build, { ohm: 1 }, { ohm: 2 }));
  });
  it('tells an open contact from one without a value, and from no number', () => {
    const parts = [{ ohm: Infinity }, { ohm: null }, { ohm: Number.NaN }, { ohm: -Infinity }, {}];
    expect(new Set(parts.map((part) => identityOf(build, part))).size).toBe(parts.length);
  });
});
