import { describe, expect, it } from 'vitest';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { provePlan } from '../../src/proof/plan/prove-plan.ts';
import { planTableOf } from '../../src/proof/report.ts';

/*
 * Owners of random bikes with random stored profiles follow the plan. What their bikes truly need is found out on the model,
 * by selecting each profile and listening, and knows nothing of the plan's rows.
 */
const BIKES = Array.from({ length: 36 }, (_, i) => i);
const result = provePlan(isAReflashNeeded, { seed: 31, bikes: BIKES });
const { meter, 'no-meter': noMeter } = result;

describe('the plan, followed by owners of random bikes', () => {
  it('is right with a cheap meter, and seldom leaves it open', () => {
    expect(meter?.plan).toMatchObject({ needless: 0, missed: 0, wrong: 0 });
    expect((meter?.plan?.unknown ?? 99) / BIKES.length).toBeLessThanOrEqual(0.08);
  });
  it('never says without a meter that nothing is needed where something is', () => {
    expect(noMeter?.plan?.missed).toBe(0);
    expect(noMeter?.plan?.answered).toBeGreaterThan(0);
  });
  it('never says without a meter that something is needed which is not, but for what it says that hangs on', () => {
    expect(noMeter?.plan?.wrongWithoutUnless).toBe(0);
  });
  it('calls no reflash most likely where that is mostly so, and counts that as no answer', () => {
    const { likelyNothing = 0, likelyNothingRight = 0, unknown = 0 } = noMeter?.plan ?? {};
    expect(likelyNothing).toBeGreaterThan(3);
    expect(unknown).toBeGreaterThanOrEqual(likelyNothing);
    // Few bikes: of 1,000 it was 98 in 100.
    expect(likelyNothingRight / likelyNothing).toBeGreaterThan(0.5);
  });
  it('is told in a row for each way of finding out', () => {
    expect(planTableOf(result, false).split('\n')).toHaveLength(3);
  });
});
