import { describe, expect, it } from 'vitest';
import { comesAfter } from '../../src/diagnosis/cost.ts';
import { minutesByTest } from '../../src/diagnosis/least-cost.ts';
import { flowCost } from '../../src/proof/flow-cost.ts';
import { PROVED_FLOWS } from '../../src/proof/flows.ts';
import { MODES, playTrial } from '../../src/proof/modes.ts';
import { subjectOf } from '../../src/proof/subjects.ts';
import { fedFromRear } from '../../src/steps/fitted/fed-from.ts';
import { BUILD_KINDS, fixedRigs } from '../../src/survey/fixed-rigs.ts';

/*
 * Minutes of a flow against the least possible, on one bike. `npm run bench` is the whole. The search itself is held to
 * textbook examples and to every decision tree of small problems in tests/diagnosis/least-cost.test.ts.
 */

/** How far above the least possible a flow may lie on any of these bikes. What is uncovered or unplugged once is paid once. */
const MOST_RATIO: Readonly<Record<string, number>> = { 'no-rear-sound': 1.15, 'amp-wont-turn-on': 1.15 };

const total = (minutes: Iterable<number>) => [...minutes].reduce((sum, one) => sum + one, 0);

describe.each(PROVED_FLOWS.filter(({ beside }) => !beside).map((proved) => [proved.id, proved] as const))(
  'the minutes of %s',
  { timeout: 120_000 },
  (id, proved) => {
    const [rig] = fixedRigs('unit', 1);
    const cost = (rig && flowCost(proved, rig)) ?? expect.fail('nothing can be wrong here');

    it('are no fewer than the least that any order takes, and not far above it', () => {
      expect(cost.exact).toBe(true);
      expect(cost.minutes).toBeGreaterThanOrEqual(cost.least);
      expect(cost.minutes / cost.least).toBeLessThan(MOST_RATIO[id] ?? 1.15);
    });
    it.each(BUILD_KINDS)('are not far above it on a bike of the kind “%s” either', (kind) => {
      const [other] = fixedRigs(kind, 1);
      const { minutes, least, exact } = (other && flowCost(proved, other)) ?? expect.fail('nothing can be wrong here');
      expect(exact).toBe(true);
      expect(minutes).toBeGreaterThanOrEqual(least);
      expect(minutes / least).toBeLessThan(MOST_RATIO[id] ?? 1.15);
    });
    it('are the sum of those of their steps, for the flow and for the best order', () => {
      expect(total([...cost.byStep.values()].map(({ flow }) => flow))).toBeCloseTo(cost.minutes, 9);
      expect(total(minutesByTest(cost.plan).values())).toBeCloseTo(cost.least, 9);
    });
    it('are spent in an order that safety allows: what comes first was done, or could not be', () => {
      const exact = MODES.find((mode) => mode.id === 'exact') ?? expect.fail('no mode');
      for (let i = 0; i < 8; i++) {
        const subject = subjectOf({ complaint: id, seed: 9, faultsPerBike: 2 }, i);
        for (const trial of subject ? exact.trials(proved, subject) : []) {
          const asked = playTrial(proved, trial).rounds[0]?.asked.map(({ step }) => step) ?? [];
          for (const [n, step] of asked.entries()) {
            const done = asked.slice(0, n).map((one) => one.id);
            const first = comesAfter(step, proved.flow.steps).filter(
              (other) => other !== 'rear-pair' || fedFromRear({ rig: trial.believed, facts: {} }),
            );
            for (const other of first) expect(done, `${step.id} of ${subject?.name}`).toContain(other);
          }
        }
      }
    });
  },
);
