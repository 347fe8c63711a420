import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { HARMS, harmOf } from '../../src/proof/harm.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import type { Remedy, Verdict } from '../../src/verdicts/verdict.ts';
import { withRuns, withUnit } from '../../src/world/faults/kit.ts';
import { healthyWorld, shapeOf } from '../../src/world/healthy.ts';
import type { World } from '../../src/world/state.ts';

/** Fixes that nobody must ever be told; what makes them harmful: common practice, no published source. */

const [AMP] = EXAMPLE_RIGS['frame-fairing'].amps;
const ON_AMP: Rig = EXAMPLE_RIGS['frame-fairing'];
const FOR_UNALTERED: Rig = { ...ON_AMP, amps: [{ ...AMP, turnOn: 'signal', needs: 'unaltered' }] };

const REMEDY: Remedy = {
  what: '',
  certainty: 'proved',
  howSure: '',
  numbers: [],
  fix: [],
  tools: '',
  minutes: 1,
  who: '',
  notBuy: [],
  cautions: [],
  proof: '',
};
const verdictOf = (id: string): Verdict => {
  const states = [...Object.values(noRearSound.states), ...Object.values(ampWontTurnOn.states)];
  const found = states.find((state) => 'verdict' in state && state.verdict.id === id);
  return found && 'verdict' in found ? found.verdict : expect.fail(`no verdict ${id}`);
};
const harms = (id: string, remedy: Partial<Remedy>, world: World) =>
  harmOf(verdictOf(id), { ...REMEDY, ...remedy }, world);
const harm = (says: RegExp) => HARMS.find((one) => says.test(one.says)) ?? expect.fail(`no harm ${says}`);

describe('a fix does harm', () => {
  it('with a fuse of 60 A on an 8 gauge lead, which carries 40 A, and not with one of 40 A', () => {
    const fuse = (value: string) => ({ numbers: [{ label: 'Main fuse, at most', value }] });
    expect(harms('amp-off', fuse('60 A'), healthyWorld(ON_AMP))).toEqual(['a bigger fuse than the plus lead carries']);
    expect(harms('amp-off', fuse('40 A'), healthyWorld(ON_AMP))).toEqual([]);
  });
  it('with a fuse of 60 A said to be for 5.2 mm² or more, and not with one said to be for 13.3 mm² or more', () => {
    const fuse = (lead: string) => ({
      numbers: [{ label: `Main fuse on ${lead} of copper or more, at most`, value: '60 A' }],
    });
    expect(harms('amp-off', fuse('5.2 mm²'), healthyWorld(ON_AMP))).toEqual([
      'a bigger fuse than the plus lead carries',
    ]);
    expect(harms('amp-off', fuse('13.3 mm²'), healthyWorld(ON_AMP))).toEqual([]);
  });
  it('with full level put back into an amplifier, unless its gain is turned down first', () => {
    const world = withUnit(healthyWorld(FOR_UNALTERED), {
      profile: shapeOf(healthyWorld(FOR_UNALTERED).rig, 'amplified-same'),
    });
    const back = 'Have the full level put back.';
    expect(harms('sense-starved-by-profile', { fix: [back] }, world)).toEqual([
      'full level back into an amplifier without a word about its gain',
    ]);
    expect(harms('sense-starved-by-profile', { fix: [back], cautions: ['back-to-full'] }, world)).toEqual([]);
    expect(harms('sense-starved-by-profile', { fix: ['Amplifier gain to minimum first.', back] }, world)).toEqual([]);
    expect(harms('sense-starved-by-profile', { fix: ['A wire from a switched feed.'] }, world)).toEqual([]);
  });
  it('with a channel switched on that carries the bass boost into an amplifier', () => {
    const healthy = healthyWorld(ON_AMP);
    const world = withUnit(healthy, { rearOn: false, profile: shapeOf(healthy.rig, 'unaltered') });
    expect(harms('rear-channels-disabled', {}, world)).toEqual([
      'a channel switched on into an amplifier without a word about its gain',
    ]);
    expect(harms('rear-channels-disabled', { cautions: ['back-to-full'] }, world)).toEqual([]);
    const onUnit = withUnit(healthyWorld({ ...ON_AMP, frontFedBy: 'unit', rearFedBy: 'unit', amps: [] }), {
      rearOn: false,
    });
    expect(harms('rear-channels-disabled', {}, onUnit)).toEqual([]);
  });
  it('with a gain set to 90 W on an amplifier of 40 W', () => {
    const world = healthyWorld({ ...ON_AMP, amps: [{ ...AMP, powerW: 40 }] });
    const set = (value: string) => ({ numbers: [{ label: 'Output to set, 90 W into 4 Ω', value }] });
    // √(90 · 4) = 18.97 V where √(40 · 4) = 12.65 V is all there is.
    expect(harms('amp-input-too-low', set('19.0 V'), world)).toEqual([
      'a gain that makes the amplifier clip at the loudest clean step',
    ]);
    expect(harms('amp-input-too-low', set('12.6 V'), world)).toEqual([]);
  });
  it('when it lowers the output under an amplifier that needs it unaltered', () => {
    const before = healthyWorld(FOR_UNALTERED);
    const after = withUnit(before, { profile: shapeOf(before.rig, 'amplified-same') });
    expect(harm(/needs the unaltered/).does(before, after, REMEDY)).toBe(true);
    expect(harm(/needs the unaltered/).does(after, before, REMEDY)).toBe(false);
    const any = healthyWorld(ON_AMP);
    expect(
      harm(/needs the unaltered/).does(any, withUnit(any, { profile: shapeOf(any.rig, 'amplified-changes') }), REMEDY),
    ).toBe(false);
  });
  it('when it joins a wire of an output to ground', () => {
    const before = healthyWorld(ON_AMP);
    const after = withRuns(before, ['rear-left'], { toFrame: { ohm: 0.1 } });
    expect(harm(/joined to ground/).does(before, after, REMEDY)).toBe(true);
    expect(harm(/joined to ground/).does(after, before, REMEDY)).toBe(false);
  });
});
