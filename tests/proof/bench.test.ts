import { describe, expect, it } from 'vitest';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { bench, benchFlow, benchJson } from '../../src/proof/bench.ts';
import { flowCost } from '../../src/proof/flow-cost.ts';
import { askThrough } from '../../src/proof/flow-cost-asked.ts';
import { callersOn, riderOf, shownBy } from '../../src/proof/flow-cost-callers.ts';
import { namedIn, problemOf } from '../../src/proof/flow-cost-problem.ts';
import { BUILD_KINDS, fixedRigs } from '../../src/survey/fixed-rigs.ts';
import type { ComplaintId } from '../../src/world/symptoms/index.ts';

/*
 * Minutes of a flow against the least possible, on a bike without an amplifier and on one with. `npm run bench` is the whole. The search itself is
 * held to textbook examples and to every decision tree of small problems in least-cost.test.ts.
 */

/** How far above the least possible a flow may lie on any of these bikes: what it spends to be sure is in it. */
const MOST_RATIO: Readonly<Record<string, number>> = {
  // Whoever only told what was before is asked for one look at the bike, before anything is named.
  'no-rear-sound': 1.65,
  // Who knows of nothing that came before says nothing of what nobody thought of: a look more, by which that is ruled out.
  'amp-wont-turn-on': 1.55,
  // Most of it is settings that take a minute each, and a second look at what brought the sound back as much again.
  'no-sound-at-all': 2.2,
  'eq-changes-when-engine-starts': 2.3,
  // What is heard is read as well, before a profile or a part is paid for. Two may be wrong: the phone is asked after although
  // another source is as bad.
  'distortion-at-volume': 2,
};

const total = (minutes: Iterable<number>) => [...minutes].reduce((sum, one) => sum + one, 0);
const flows = await Promise.all(FAULT_FLOWS.map(async ([id, listed]) => [id, await benchFlow(listed)] as const));
const onKinds = BUILD_KINDS.slice(0, 2).map((kind) => [kind, fixedRigs(kind, 1)[0] ?? expect.fail('no bike')] as const);

describe.each(flows)('the minutes of %s', { timeout: 120_000 }, (id, flow) => {
  const [complaint] = Object.keys(flow.complaints) as ComplaintId[];
  if (!complaint) throw new Error('nothing is complained of');

  it.each(onKinds)('are no fewer than the least that any order takes, and not far above it, on “%s”', (_, rig) => {
    const cost = flowCost(flow, complaint, rig) ?? expect.fail('nothing can be wrong here');
    expect(cost.exact).toBe(true);
    expect(cost.minutes).toBeGreaterThanOrEqual(cost.least);
    expect(cost.minutes / cost.least).toBeLessThan(MOST_RATIO[id] ?? 1.5);
    // They are the sum of those of their steps, for the flow and for the best order, and of those of its callers.
    expect(total([...cost.byStep.values()].map((one) => one.flow))).toBeCloseTo(cost.minutes, 9);
    expect(total([...cost.byStep.values()].map((one) => one.least))).toBeCloseTo(cost.least, 9);
    const each = cost.ways.map(({ shareRatio, flow: told }) => shareRatio * total(told.map(({ minutes }) => minutes)));
    expect(total(each)).toBeCloseTo(cost.minutes, 9);
    expect(total(cost.ways.map(({ shareRatio }) => shareRatio))).toBeCloseTo(1, 9);
  });
  it.each(onKinds)('are held against orders that forbid nothing that the flow does, on “%s”', (_, rig) => {
    const callers = callersOn(complaint, rig);
    const ends = callers.map(({ bike }) => askThrough(flow.stage, rig, bike, riderOf(rig)));
    const { problem } = problemOf(flow.stage, rig, callers, ends, (fault) => flow.nameOf(fault, rig));
    const tests = new Map(problem.tests.map((test) => [test.id, test]));
    for (const { told } of ends) {
      const done = new Set<string>();
      for (const { step, again } of told) {
        if (!again)
          for (const first of tests.get(step.id)?.after ?? [])
            expect(done, `${first} before ${step.id}`).toContain(first);
        done.add(step.id);
      }
    }
    // Whatever the flow ends in for somebody is an end for the search as well.
    const names = new Set(ends.flatMap((end) => namedIn(end) ?? []));
    expect(problem.classes.length).toBeGreaterThanOrEqual(names.size);
    expect(total(problem.weights)).toBeCloseTo(total(callers.map(({ weight }) => weight)), 9);
  });
  it('are those of one rider: what chance has a say in tells no fault from another', () => {
    const [, rig] = onKinds[1] ?? expect.fail('no bike');
    const callers = callersOn(complaint, rig);
    const control = flow.stage.flow.steps.get('rear-control');
    if (!control) return;
    const outcomes = new Set(callers.map((caller) => shownBy(flow.stage.flow, rig, caller).outcome(control)));
    // There is such a control on this bike, or there is not.
    expect(outcomes.has('none') && outcomes.has('no-change')).toBe(false);
  });
});

describe('the bench', { timeout: 120_000 }, () => {
  it('gives for each flow its minutes, the least, their ratio, and whether that is exact', async () => {
    // Each flow by itself is above.
    const some = FAULT_FLOWS.slice(0, 2);
    const benched = await bench(fixedRigs('unit', 1), some);
    expect(Object.keys(benched)).toEqual(some.map(([id]) => id));
    const page = {
      bytesFirst: 12,
      bytesAll: 34,
      answerMs: { median: 20.4, p95: 56.6 },
      slowLineMs: { firstPaint: 2300.2, firstTap: 2500, secondQuestion: 7000 },
    };
    const printed = JSON.parse(
      benchJson(benched, { 'no-rear-sound': page, 'a-plan': { bytesFirst: 5, bytesAll: 6 } }),
    ).flows;
    for (const [id, { minutes, least, ratio, exact }] of Object.entries(benched)) {
      expect(ratio).toBe(minutes / least);
      expect(ratio).toBeGreaterThanOrEqual(1);
      expect(printed[id]).toMatchObject({ exact });
      expect(printed[id].minutes / printed[id].least).toBeCloseTo(printed[id].ratio, 1);
    }
    expect(printed['no-rear-sound']).toMatchObject({
      bytesFirst: 12,
      bytesAll: 34,
      answerMs: { median: 20, p95: 57 },
      slowLineMs: { firstPaint: 2300, firstTap: 2500, secondQuestion: 7000 },
    });
    expect(printed['a-plan']).toEqual({ bytesFirst: 5, bytesAll: 6 });
    expect(printed['amp-wont-turn-on']).not.toHaveProperty('bytesAll');
  });
});
