import { describe, expect, it } from 'vitest';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { CAUSES } from '../../src/causes/all.ts';
import type { Cause } from '../../src/causes/cause.ts';
import { EFFORT, type Effort, type RepairAction } from '../../src/causes/repair-action.ts';
import type { Rig } from '../../src/rig/rig.ts';
import type { Findings } from '../../src/steps/outcome.ts';
import { standsFor } from '../../src/survey/survey-of.ts';
import { FAULTS, type Fault, severityAt } from '../../src/world/faults/index.ts';
import { harmsOf } from '../../src/world/harm.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { withRepairs } from '../../src/world/repair.ts';
import type { World } from '../../src/world/state.ts';
import { COMPLAINTS, type ComplaintId, ridden } from '../../src/world/symptoms/index.ts';
import { heardCorners } from '../../src/world/symptoms/symptom.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';
import { CONVERTER_RIGS, LITHIUM_RIGS } from '../world/bikes.ts';
import { changes } from './laid-on.ts';
import { onBike } from './on-bike.ts';

/* The fix of every cause, done to bikes of the model that have what it stands for. Nothing is looked up by its name. */

const RIGS: readonly Rig[] = [
  ...Object.values(TWENTY_RIGS).filter((_, i) => i % 2 === 0 || i === 1),
  ...Object.values(CONVERTER_RIGS).slice(0, 1),
  ...Object.values(LITHIUM_RIGS).slice(0, 1),
];
/** What has a flow: the complaints that a fix is asked for. */
const ASKED = new Set(FAULT_FLOWS.flatMap(([, { complaints }]) => Object.keys(complaints)));
const complains = (flow: ComplaintId, world: World): boolean => COMPLAINTS[flow](ridden(world)) === 'yes';

interface Bad {
  readonly rig: Rig;
  readonly world: World;
  readonly complaints: readonly ComplaintId[];
}
/** Bikes on which a fault shows. Two builds tell as much as twenty. */
function badBikes(fault: Fault, most: number): readonly Bad[] {
  const bad: Bad[] = [];
  for (const [i, rig] of RIGS.entries()) {
    const healthy = healthyWorld(rig);
    if (bad.length === most || !fault.fits(healthy)) continue;
    const world = fault.apply(healthy, severityAt(fault, [0.5, 0.9][i % 2] ?? 0.5));
    const complaints = (Object.keys(fault.weights) as ComplaintId[]).filter(
      (flow) => ASKED.has(flow) && complains(flow, world) && !complains(flow, healthy),
    );
    if (complaints.length > 0) bad.push({ rig, world, complaints });
  }
  return bad;
}
/** What a rider says whose one speaker is silent: which. A fix that hangs on it is not told to anybody who was not asked. */
function toldOf(world: World): Readonly<Record<string, string>> {
  const bike = ridden(world);
  const heard = heardCorners(bike, bike.at({}));
  const silent = bike.fitted.filter((corner) => !heard.includes(corner));
  return silent.length === 1 && silent[0] ? { 'which-corner': silent[0] } : {};
}
function toldBike(rig: Rig, world: World): Findings {
  const told = toldOf(world);
  const facts = Object.fromEntries(Object.entries(told).map(([id, option]) => [id, { option }]));
  return { ...onBike(rig, told), facts };
}
const faultsOf = (cause: Cause) => FAULTS.filter((fault) => standsFor(cause, fault));

/** A small part is had for next to nothing, and some faults of strange bikes want one more. */
const DEAR: ReadonlySet<Effort> = new Set<Effort>(['part', 'visit', 'reflash']);

describe.each(CAUSES.map((cause) => [cause.id, cause] as const))('the fix of %s', (_, cause) => {
  it('takes away what it stands for, and harms nothing', () => {
    for (const fault of faultsOf(cause))
      for (const { rig, world, complaints } of badBikes(fault, 2)) {
        const after = withRepairs(world, cause.remedy(toldBike(rig, world)).repair);
        const left = complaints.filter((flow) => complains(flow, after));
        const harms = harmsOf(world, after).map(({ id }) => id);
        expect({ fault: fault.id, left, harms }, rig.name).toEqual({ fault: fault.id, left: [], harms: [] });
      }
  });
  it('does something to bikes that have one of its faults, complaint or not', () => {
    const bikes = faultsOf(cause).flatMap((fault) =>
      RIGS.map((rig) => ({ rig, healthy: healthyWorld(rig) }))
        .filter(({ healthy }) => fault.fits(healthy))
        .map(({ rig, healthy }) => ({ rig, world: fault.apply(healthy, severityAt(fault, 0.5)) })),
    );
    const acts = bikes.some(
      ({ rig, world }) => changes(world, withRepairs(world, cause.remedy(onBike(rig)).repair)).length > 0,
    );
    expect(acts || bikes.length === 0).toBe(true);
  });
  it('asks for a profile that there is: a lowered level goes with the boost out, a full one with it in', () => {
    for (const rig of RIGS)
      for (const action of cause.remedy(onBike(rig)).repair) {
        if (action.do !== 'select-profile') continue;
        expect(action.boost === 'none').toBe(action.level === 'lowered');
        expect(action.boost === 'as-delivered').toBe(action.level === 'full');
      }
  });
  it('buys and books nothing for nothing: what costs more than a crimp changes a bike that has one of its faults', () => {
    const bikes = faultsOf(cause).flatMap((fault) => badBikes(fault, 3));
    if (bikes.length === 0) return;
    const idle = new Map<RepairAction['do'], boolean>();
    for (const { rig, world } of bikes) {
      let now = world;
      for (const action of cause.remedy(onBike(rig)).repair) {
        const next = withRepairs(now, [action]);
        // A fuse on a short opens again: it was fitted.
        const acts = changes(now, next).length > 0 || action.do === 'renew-fuse';
        if (DEAR.has(EFFORT[action.do])) idle.set(action.do, (idle.get(action.do) ?? true) && !acts);
        now = next;
      }
    }
    expect([...idle].filter(([, is]) => is).map(([name]) => name)).toEqual([]);
  });
});
