import { describe, expect, it } from 'vitest';
import type { RepairAction } from '../../src/causes/repair-action.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { withAmp, withRuns, withSpeakers, withUnit } from '../../src/world/change.ts';
import { HARMS, harmsOf } from '../../src/world/harm.ts';
import { healthyWorld, shapeOf } from '../../src/world/healthy.ts';
import { withRepairs } from '../../src/world/repair.ts';
import type { World } from '../../src/world/state.ts';

/* Repairs that nobody must ever be told to do; what makes them harmful: common practice, no published source. */

const [AMP] = EXAMPLE_RIGS['frame-fairing'].amps;
const ON_AMP: Rig = EXAMPLE_RIGS['frame-fairing'];
const FOR_UNALTERED: Rig = { ...ON_AMP, amps: [{ ...AMP, turnOn: 'signal', needs: 'unaltered' }] };
const ON_UNIT: Rig = { ...ON_AMP, frontFedBy: 'unit', rearFedBy: 'unit', amps: [] };

const ids = (before: World, after: World) => harmsOf(before, after).map(({ id }) => id);
const harmsDoing = (world: World, ...actions: readonly RepairAction[]) => ids(world, withRepairs(world, actions));
const bike = healthyWorld(ON_AMP);

describe('a repair does harm', () => {
  it('with a fuse of 60 A on an 8 gauge lead, which carries 40 A, and not with one of 40 A', () => {
    const blown = withAmp(bike, { fuseOpen: true });
    expect(harmsDoing(blown, { do: 'renew-fuse', fuse: 'main', fuseA: 60 })).toEqual(['fuse-above-lead']);
    expect(harmsDoing(blown, { do: 'renew-holder', fuseA: 60 })).toEqual(['fuse-above-lead']);
    expect(harmsDoing(blown, { do: 'renew-fuse', fuse: 'main', fuseA: 40 })).toEqual([]);
  });
  it('with the fuse that was there, on a lead that never carried it', () => {
    const thin = withAmp(bike, ({ plusLead }) => ({ fuseOpen: true, plusLead: { ...plusLead, sectionM2: 2.08e-6 } }));
    expect(harmsDoing(thin, { do: 'renew-fuse', fuse: 'main' })).toEqual(['fuse-above-lead']);
    // A repair of something else leaves that as it is.
    expect(harmsDoing(thin, { do: 'repair-amp' })).toEqual([]);
  });
  it('with a lead thinner than its fuse asks for: 40 A want 8 gauge, 30 A do with 10', () => {
    const lead = (sectionM2: number, fuseA: number) =>
      harmsDoing(bike, { do: 'renew-lead', lead: 'plus', sectionM2, fuseA });
    expect(lead(5.26e-6, 40)).toContain('lead-below-fuse');
    expect(lead(5.26e-6, 30)).not.toContain('lead-below-fuse');
    expect(lead(0.5e-6, 5)).toEqual(expect.arrayContaining(['fuse-above-lead', 'lead-below-fuse']));
    expect(lead(8.37e-6, 40)).toEqual([]);
    expect(lead(13.3e-6, 60)).toEqual([]);
  });
  it('with 8 gauge of copper-clad aluminium under a fuse of 40 A', () => {
    const clad = withAmp(bike, ({ plusLead }) => ({ fuseOpen: true, plusLead: { ...plusLead, metal: 'clad' } }));
    expect(harmsDoing(clad, { do: 'renew-fuse', fuse: 'main' })).toEqual(['fuse-above-lead']);
    expect(harmsDoing(clad, { do: 'renew-fuse', fuse: 'main', fuseA: 20 })).toEqual([]);
  });
  it('with a lead that has less copper than the old one, and a ground thinner than its positive', () => {
    const thick = withAmp(bike, ({ plusLead }) => ({ plusLead: { ...plusLead, sectionM2: 13.3e-6 } }));
    const lead = (sectionM2: number) => harmsDoing(thick, { do: 'renew-lead', lead: 'plus', sectionM2, fuseA: 40 });
    expect(lead(8.37e-6)).toEqual(['lead-thinner']);
    expect(lead(13.3e-6)).toEqual([]);
    // 13.3 mm² of copper-clad aluminium are worth 8.3 mm² of copper.
    const clad = withAmp(thick, ({ plusLead }) => ({ plusLead: { ...plusLead, metal: 'clad' } }));
    const copper: RepairAction = { do: 'renew-lead', lead: 'plus', sectionM2: 8.37e-6, fuseA: 40 };
    expect(harmsDoing(clad, copper)).toEqual([]);
    const ground = (sectionM2: number) => harmsDoing(bike, { do: 'renew-lead', lead: 'ground', sectionM2 });
    expect(ground(5.26e-6)).toEqual(['ground-below-plus']);
    expect(ground(8.37e-6)).toEqual([]);
  });
  it('with a new lead whose fuse full bass opens: 35 A on 4 × 90 W, against 1.35 times 20 A (ISO 8820-3)', () => {
    // 4 × 90 W / (0.72 × 14.4 V) = 34.7 A. A lead of this bike that was thin before is not made thinner.
    const thin = withAmp(bike, ({ plusLead }) => ({ plusLead: { ...plusLead, sectionM2: 3.31e-6 }, fuseRatedA: 20 }));
    const lead = (sectionM2: number, fuseA: number) =>
      harmsDoing(thin, { do: 'renew-lead', lead: 'plus', sectionM2, fuseA });
    expect(lead(3.31e-6, 20)).toEqual(['lead-below-bass']);
    expect(lead(8.37e-6, 20)).toEqual(['lead-below-bass']);
    expect(lead(5.26e-6, 30)).toEqual([]);
  });
  it('with a gain turned up to more than a speaker takes', () => {
    const weak = withAmp(withSpeakers(bike, ['rear-left', 'rear-right'], { ratedW: 30 }), {
      gainRatio: { front: 1, rear: 0.1 },
    });
    // 17.3 V on 3.3 Ω are 90 W.
    expect(harmsDoing(weak, { do: 'set-gain', axle: 'rear', outputV: 17.3 })).toEqual(['too-much-for-speaker']);
    // 9 V are 25 W.
    expect(harmsDoing(weak, { do: 'set-gain', axle: 'rear', outputV: 9 })).toEqual([]);
  });
  it('when rear channels that were on are off, and when a selector waits for a wire that is not fitted', () => {
    const off = withUnit(bike, { rearOn: false });
    expect(ids(withUnit(bike, { rearOn: true }), off)).toEqual(['rear-switched-off']);
    expect(ids(off, bike)).not.toContain('rear-switched-off');
    const listens = healthyWorld(FOR_UNALTERED);
    const wire: RepairAction = { do: 'set-selector', selector: 'turn-on', to: 'wire' };
    expect(harmsDoing(listens, wire)).toEqual(['never-wakes']);
    expect(harmsDoing(bike, wire)).toEqual([]);
    expect(harmsDoing(listens, { do: 'wake-by-wire' })).toEqual([]);
  });
  it('with 2 Ω on an amplifier that is rated into 4 Ω, and on a head unit', () => {
    const two: RepairAction = { do: 'replace-speaker', where: 'rear', ratedOhm: 2 };
    expect(harmsDoing(bike, two)).toEqual(['load-below-rating']);
    expect(harmsDoing(healthyWorld(ON_UNIT), two)).toEqual(['load-below-rating']);
    expect(harmsDoing(bike, { ...two, ratedOhm: 4 })).toEqual([]);
    expect(harmsDoing(bike, { ...two, ratedOhm: 8 })).toEqual([]);
    // Where 2 Ω hung on it from the start they may again.
    expect(harmsDoing(healthyWorld({ ...ON_UNIT, rearRatedOhm: 2 }), two)).toEqual([]);
    expect(harmsDoing(healthyWorld(EXAMPLE_RIGS.trunk), two)).toEqual([]);
  });
  it('with a speaker that is exchanged for a like one where too many hang already, not with what leaves them hanging', () => {
    const rear = ['rear-left', 'rear-right'] as const;
    const many = withSpeakers(bike, rear, {
      count: 2,
      wiring: 'parallel',
      leakDb: 8,
      bareTweeter: true,
      scrapes: 'always',
    });
    expect(harmsDoing(many, { do: 'replace-speaker', where: 'rear', ratedOhm: 4 })).toEqual(['load-below-rating']);
    expect(harmsDoing(many, { do: 'seal-mount', where: 'rear' })).toEqual([]);
    expect(harmsDoing(many, { do: 'fit-tweeter-filter', where: 'rear' })).toEqual([]);
    expect(harmsDoing(many, { do: 'rewire-speakers', where: 'rear', togetherOhm: 4 })).toEqual([]);
  });
  it('with two speakers of 4 Ω that are joined side by side', () => {
    const pairs = withSpeakers(bike, ['rear-left', 'rear-right'], { count: 2, wiring: 'series' });
    expect(harmsDoing(pairs, { do: 'rewire-speakers', where: 'rear', togetherOhm: 2 })).toEqual(['load-below-rating']);
    expect(harmsDoing(pairs, { do: 'rewire-speakers', where: 'rear', togetherOhm: 4 })).toEqual([]);
  });
  it('with a lowered or flattened profile under an amplifier that needs the unaltered output', () => {
    const made = healthyWorld(FOR_UNALTERED);
    expect(harmsDoing(made, { do: 'select-profile', level: 'lowered' })).toEqual(['lowered-into-unaltered']);
    expect(harmsDoing(made, { do: 'select-profile', boost: 'none' })).toEqual(['lowered-into-unaltered']);
    expect(harmsDoing(made, { do: 'select-profile', eq: 'same' })).toEqual([]);
    expect(
      harmsDoing(withUnit(bike, { profile: shapeOf(bike.rig, 'unaltered') }), {
        do: 'select-profile',
        level: 'lowered',
        boost: 'none',
      }),
    ).toEqual([]);
  });
  it('with the full level, or the boost, back into an amplifier whose gain was set for the lowered one', () => {
    expect(harmsDoing(bike, { do: 'select-profile', level: 'full' })).toEqual(['full-into-lowered']);
    expect(harmsDoing(bike, { do: 'select-profile', boost: 'as-delivered' })).toEqual(['full-into-lowered']);
  });
  it('with the full level into one whose gain is set for it again only if that is done', () => {
    // √(90 · 4) = 18.97 V is all there is of it.
    const set: RepairAction = { do: 'set-gain', axle: 'both', outputV: 18.97 };
    expect(harmsDoing(bike, { do: 'select-profile', level: 'full' }, set)).toEqual([]);
  });
  it('with a rear that is switched on at full level into an amplifier that was set for the lowered one', () => {
    const off = withUnit(bike, { rearOn: false, profile: shapeOf(bike.rig, 'unaltered') });
    const front = withAmp(off, ({ gainRatio }) => ({ gainRatio: { ...gainRatio, front: gainRatio.front / 6 } }));
    expect(harmsDoing(front, { do: 'select-profile', rear: 'on' })).toEqual(['full-into-lowered']);
    expect(harmsDoing(front, { do: 'select-profile', rear: 'on', level: 'lowered', boost: 'none' })).toEqual([]);
    const onUnit = withUnit(healthyWorld(ON_UNIT), { rearOn: false });
    expect(harmsDoing(onUnit, { do: 'select-profile', rear: 'on' })).toEqual([]);
  });
  it('not with the unaltered level into an amplifier that needs it', () => {
    const made = healthyWorld(FOR_UNALTERED);
    const starved = withUnit(made, { profile: shapeOf(made.rig, 'amplified-same') });
    expect(harmsDoing(starved, { do: 'select-profile', level: 'full', boost: 'as-delivered' })).toEqual([]);
  });
  it('with a gain set to 90 W on an amplifier of 40 W', () => {
    const low = withAmp(healthyWorld({ ...ON_AMP, amps: [{ ...AMP, powerW: 40 }] }), {
      gainRatio: { front: 1, rear: 0.1 },
    });
    const set = (outputV: number) => harmsDoing(low, { do: 'set-gain', axle: 'rear', outputV });
    // √(90 · 4) = 18.97 V where √(40 · 4) = 12.65 V is all there is.
    expect(set(18.97)).toEqual(['clips-by-gain']);
    expect(set(12.65)).toEqual([]);
  });
  it('not with a gain that is turned down, however high it still is', () => {
    const high = withAmp(bike, ({ gainRatio }) => ({
      gainRatio: { front: gainRatio.front, rear: 10 * gainRatio.rear },
    }));
    expect(harmsDoing(high, { do: 'set-gain', axle: 'rear', outputV: 40 })).toEqual([]);
  });
  it('when a wire of an output is joined to ground, and not when damp lies on it', () => {
    const joined = withRuns(bike, ['rear-left'], { toFrame: { ohm: 0.1 } });
    const grounded = withUnit(bike, ({ toGround }) => ({ toGround: { ...toGround, 'front-left': { ohm: 0.1 } } }));
    expect(ids(bike, joined)).toEqual(['output-on-ground']);
    expect(ids(bike, grounded)).toEqual(['output-on-ground']);
    expect(ids(joined, bike)).toEqual([]);
    expect(ids(bike, withRuns(bike, ['rear-left'], { toFrame: { ohm: 2000 } }))).toEqual([]);
  });
  it('when a fuse that is too large holds on a lead that lies on the frame', () => {
    const chafed = withAmp(bike, { fuseOpen: true, leadToFrame: { ohm: 0.05 } });
    expect(harmsDoing(chafed, { do: 'renew-fuse', fuse: 'main', fuseA: 300 })).toEqual([
      'fuse-above-lead',
      'lead-live-on-frame',
    ]);
    expect(harmsDoing(chafed, { do: 'renew-fuse', fuse: 'main' })).toEqual([]);
  });
  it('when the remote wire of a switched amplifier goes to a feed that never does', () => {
    expect(ids(bike, withAmp(bike, { remoteSource: 'permanent' }))).toEqual(['remote-always-live']);
    expect(ids(withAmp(bike, { remoteSource: 'permanent' }), bike)).toEqual([]);
  });
  it('in ways that are all told apart, each in a sentence', () => {
    expect(new Set(HARMS.map(({ id }) => id)).size).toBe(HARMS.length);
    for (const { says } of HARMS) expect(says).toMatch(/^[A-Z].*\.$/);
  });
});
