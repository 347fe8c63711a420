import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { withUnit } from '../../src/world/change.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { hear } from '../../src/world/hear.ts';
import type { RearPairs } from '../../src/world/state.ts';
import { expectClose } from '../compute/close.ts';
import { look, pairV } from './bikes.ts';

/*
 * Two bridge outputs, each with half its tone on one wire and the other half opposed on the other: what stands between
 * any two of their four wires is the difference of two halves. The figures below are that sum, done by hand.
 */

const ON_AMP: Rig = EXAMPLE_RIGS['frame-fairing'];
const BUILDS: Readonly<Record<string, Rig>> = {
  'on the head unit': { ...ON_AMP, frontFedBy: 'unit', rearFedBy: 'unit', amps: [] },
  'on an amplifier': ON_AMP,
};

describe.each(Object.entries(BUILDS))('crossed rear pairs %s', (_, rig) => {
  const bike = (rearPairs: RearPairs) => withUnit(healthyWorld(rig), { rearPairs });
  /** Volts at the start of both runs over those of a sound bike in the middle, left first. */
  const ratios = (rearPairs: RearPairs, balance: number) => {
    const sound = pairV(look(bike('own')), 'run-plus', 'run-minus');
    const seen = look(bike(rearPairs), { balance });
    return (['rear-left', 'rear-right'] as const).map((corner) => pairV(seen, 'run-plus', 'run-minus', corner) / sound);
  };
  const expectRatios = (rearPairs: RearPairs, balance: number, [left, right]: readonly [number, number]) => {
    const [l = Number.NaN, r = Number.NaN] = ratios(rearPairs, balance);
    expectClose(l + 1, left + 1, 5e-3);
    expectClose(r + 1, right + 1, 5e-3);
  };
  it('with sides changed play in the middle, and on the other side when balance is at one', () => {
    expectRatios('sides-changed', 0, [1, 1]);
    expectRatios('sides-changed', -1, [0, 1]);
    expectRatios('sides-changed', 1, [1, 0]);
  });
  it('with negative wires changed play in the middle, and on both sides at half when balance is at one', () => {
    expectRatios('minuses-changed', 0, [1, 1]);
    expectRatios('minuses-changed', -1, [0.5, 0.5]);
  });
  it('joined like with like are silent in the middle, and play on both sides at half when balance is at one', () => {
    expectRatios('like-with-like', 0, [0, 0]);
    expectRatios('like-with-like', 1, [0.5, 0.5]);
  });
  it('joined like with like still hiss: only what is the same on both sides is gone', () => {
    const { world, moment, now } = look(bike('like-with-like'));
    expect(now.unit.protects).toEqual([]);
    expect(hear(world, moment, now)['rear-left']).toMatchObject({ plays: false, hisses: true });
  });
});
