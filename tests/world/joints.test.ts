import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { ampNodes, BATTERY_PLUS, UNIT_GROUND } from '../../src/world/bike/nodes.ts';
import { powerV } from '../../src/world/bike/operate.ts';
import { withAmp, withRuns, withSupply } from '../../src/world/change.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { hear } from '../../src/world/hear.ts';
import type { Moment } from '../../src/world/moment.ts';
import type { World } from '../../src/world/state.ts';
import { expectClose } from '../compute/close.ts';
import { evenly } from '../compute/evenly.ts';
import { at, look } from './bikes.ts';

/* Joints on the way of the supply and of a speaker run. Every figure is Ohm’s law, done by hand beside it. */

const healthy = healthyWorld(EXAMPLE_RIGS['frame-fairing']);
const lampOf = (world: World, moment: Partial<Moment> = {}) => at(world, moment).amps[0]?.lamp;
const { plusEnd, plus, fuseIn, fuseOut, ground } = ampNodes(0);

describe('the joint of copper and terminal at the amplifier', () => {
  it('loses its ohms times the current between lead copper and terminal metal, whatever it has', () => {
    fc.assert(
      fc.property(evenly(1e-3, 1), (ohm) => {
        const now = at(withAmp(healthy, { terminal: { ohm } }), { volumeRatio: 0.5 });
        const currentA = now.power.currentA('positive lead 0').re;
        expectClose(powerV(now, plusEnd, plus) + 1, ohm * currentA + 1, 1e-6);
      }),
    );
  });
  it('is next to nothing on a sound bike: a fifth of a milliohm at 45 A is 9 mV', () => {
    const now = at(healthy, { volumeRatio: 1, engine: 'cruise' });
    expect(powerV(now, plusEnd, plus)).toBeLessThan(0.011);
  });
  it('keeps an amplifier off from some ohms on, and only on bumps when it is loose', () => {
    expect(lampOf(withAmp(healthy, { terminal: { ohm: 3 } }))).toBe('off');
    const loose = withAmp(healthy, { terminal: { ohm: 0.01, movedOhm: Infinity } });
    expect([lampOf(loose), lampOf(loose, { moves: ['amp-supply'] }), lampOf(loose, { moves: ['battery'] })]).toEqual([
      'normal',
      'off',
      'normal',
    ]);
  });
});

describe('a positive lead that is broken inside', () => {
  it('has the battery behind its fuse, and nothing at the amplifier', () => {
    const now = at(withAmp(healthy, { plusCopper: { ohm: Infinity } }));
    expectClose(powerV(now, fuseOut), powerV(now, BATTERY_PLUS), 1e-3);
    expect(powerV(now, plusEnd)).toBeLessThan(0.01);
  });
});
describe('a fuse holder that is open', () => {
  it('has the battery before its fuse, and nothing behind it, though the fuse is whole', () => {
    const now = at(withAmp(healthy, { holder: { ohm: Infinity } }));
    expectClose(powerV(now, fuseIn), powerV(now, BATTERY_PLUS), 1e-3);
    expect(powerV(now, fuseOut)).toBeLessThan(0.01);
  });
});

describe('positive and ground that are both half bad', () => {
  it('keep an amplifier off together, and neither of them alone', () => {
    // It draws 0.9 A at idle and goes off below 10.2 V: (12.6 − 10.2) / 0.9 = 2.7 Ω at rest, a little less with music.
    const half = { ohm: 1.2 };
    expect(lampOf(withAmp(healthy, { plusCopper: half, groundRing: half }))).toBe('off');
    expect(lampOf(withAmp(healthy, { plusCopper: half }))).toBe('normal');
    expect(lampOf(withAmp(healthy, { groundRing: half }))).toBe('normal');
  });
});

describe('a ground screw that head unit and amplifier share', () => {
  const shared = (ohm: number, holds: 'both' | 'unit' = 'both') =>
    withSupply(healthy, { sharedScrew: { joint: { ohm }, holds } });
  it('lifts both grounds by what both draw together', () => {
    const now = at(shared(0.3), { volumeRatio: 0.3 });
    const screwA = now.power.currentA('shared screw').re;
    const bothA = now.power.currentA('unit ground').re + now.power.currentA('negative ring 0').re;
    expectClose(screwA, bothA, 1e-6);
    expectClose(powerV(now, UNIT_GROUND), 0.3 * screwA + 1e-3 * now.power.currentA('unit ground').re, 1e-4);
    expect(powerV(now, ground)).toBeGreaterThan(0.3 * screwA);
  });
  it('takes the head unit down with loud music too, where its own ground would not', () => {
    const loud = { volumeRatio: 1, averageRatio: 1 / 3 };
    const own = at(withAmp(healthy, { groundRing: { ohm: 0.05 } }), loud);
    expect(at(shared(0.05), loud).unitV).toBeLessThan(own.unitV - 0.6);
  });
  it('lets the amplifier be when that has a ground of its own', () => {
    expect(lampOf(shared(1.8))).toBe('off');
    expect(lampOf(shared(1.8, 'unit'))).toBe('normal');
  });
  it('is the frame itself when it is sound', () => {
    expectClose(at(shared(1e-6)).unitV, at(healthy).unitV, 1e-5);
  });
});

describe('a second connector of a rear run', () => {
  const film = withRuns(healthy, ['rear-left', 'rear-right'], { second: { ohm: 1e4, movedOhm: 0.5 } });
  const plays = (world: World, moment: Partial<Moment>) => {
    const seen = look(world, moment);
    return hear(seen.world, seen.moment, seen.now)['rear-left'].plays;
  };
  it('comes back under a finger on the run, and not under one on the lid', () => {
    expect(plays(film, {})).toBe(false);
    expect(plays(film, { moves: ['rear-run'] })).toBe(true);
    expect(plays(film, { moves: ['lid'] })).toBe(false);
  });
});
