import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import type { StagedFlow } from '../../machines/machine.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { answered, confirmed, repaired, revised } from '../../src/case/change.ts';
import type { Case, CaseEvent } from '../../src/case/events.ts';
import { fold } from '../../src/case/fold.ts';
import { fromLink, toLink } from '../../src/case/link.ts';
import { late as ampLate } from '../../src/likelihoods/amp-wont-turn-on.ts';
import { late as rearLate } from '../../src/likelihoods/no-rear-sound.ts';
import type { Answer, Step } from '../../src/steps/step.ts';
import { answersByOutcome, caseOn, openIn, stand } from '../journey.ts';
import { pump, pumpLate } from '../machines/pump.ts';

const FLOWS = [noRearSound, ampWontTurnOn].map((flow) => [flow.id, flow] as const);
const bike: CaseEvent = { type: 'rig', rig: {} };
const answer = (step: string, option: string): CaseEvent => ({ type: 'answer', step, answer: { option } });
const fresh = caseOn(pump);
const folded = (it: Case) => fold(it.events, pump.steps, pumpLate);

/** The steps of a flow, and how often they were looked at. */
class Counted extends Map<string, Step> {
  looks = 0;
  override get(id: string): Step | undefined {
    this.looks++;
    return super.get(id);
  }
  override *values(): MapIterator<Step> {
    for (const step of super.values()) {
      this.looks++;
      yield step;
    }
  }
}

describe('folding the events of a case', () => {
  it('keeps the last answer to each step, in the place of its first', () => {
    const { facts } = fold(
      [bike, answer('hum', 'hums'), answer('float', 'cured'), answer('hum', 'silent')],
      pump.steps,
      pumpLate,
    );
    expect(Object.entries(facts)).toEqual([
      ['hum', { option: 'silent' }],
      ['float', { option: 'cured' }],
    ]);
  });
  it('keeps the numbers of a second look that means the same', async () => {
    const [first, second] = [{ readings: { pumpV: '0.1 V' } }, { readings: { pumpV: '0.2 V' } }];
    const it_ = confirmed(answered(fresh, 'volts', first), 'volts', second);
    expect(folded(it_).facts['volts']).toEqual(second);
    expect(folded(it_).checked).toEqual(new Set(['volts']));
    expect(await fromLink(await toLink(it_))).toMatchObject({ ok: true, case: it_ });
  });
  it('counts what was given once more since the last repair', () => {
    const it_ = answered(answered(fresh, 'hum', { option: 'hums' }), 'float', { option: 'cured' });
    const twice = revised(confirmed(it_, 'hum'), 'float', { option: 'no-change' });
    expect(folded(twice)).toMatchObject({ askedAgain: 2, checked: new Set(['hum', 'float']) });
    expect(folded(repaired(twice, 'jammed'))).toMatchObject({ askedAgain: 0, checked: new Set(['float']) });
  });
  it('knows how often each repair fails, a check that only clears a cause as well', () => {
    // Judged: a part that was exchanged leaves its fault in 2 %, a wire that was crimped in 10 %, a check errs in 5 %.
    const it_ = repaired(repaired(repaired(fresh, 'winding-open'), 'lead-cut', 'better'), 'jammed', 'not-it');
    expect(folded(it_).repairs).toEqual([
      { cause: 'winding-open', failsRatio: 0.02, result: 'still' },
      { cause: 'lead-cut', failsRatio: 0.1, result: 'better' },
      expect.objectContaining({ cause: 'jammed', failsRatio: 0.05 }),
    ]);
  });
  it('knows whether anything was learnt since the case came from another flow', () => {
    const came: CaseEvent = { type: 'handOver', flow: 'pump' };
    const learnt = (...events: CaseEvent[]) =>
      fold([bike, answer('hum', 'silent'), ...events], pump.steps, pumpLate).learnt;
    expect(learnt()).toBe(true);
    expect(learnt(came)).toBe(false);
    expect(learnt(came, { type: 'confirm', step: 'hum' }, { type: 'note', text: 'wet' })).toBe(false);
    expect(learnt(came, answer('float', 'cured'))).toBe(true);
    expect(learnt(came, { type: 'repair', verdict: 'jammed' })).toBe(true);
    expect(learnt(came, answer('float', 'cured'), came)).toBe(false);
  });
  it('does twice the work for twice the events, and no more', () => {
    for (const [flow, late] of [
      [noRearSound, rearLate],
      [ampWontTurnOn, ampLate],
    ] as const) {
      const steps = [...flow.steps.keys()];
      const changes = (count: number): readonly CaseEvent[] =>
        Array.from({ length: count }, (_, i): CaseEvent => {
          const step = steps[i % steps.length] ?? '';
          if (i % 50 === 49) return { type: 'repair', verdict: flow.causes[i % flow.causes.length] ?? '' };
          return { type: i % 3 === 0 ? 'answer' : 'revise', step, answer: { cannot: true } };
        });
      const work = (count: number): number => {
        const counted = new Counted(flow.steps);
        fold([bike, ...changes(count)], counted, late);
        return counted.looks;
      };
      // The first events find fewer facts to look at, so the work for the first is less.
      expect(work(4000) - work(2000)).toBeLessThan(1.1 * (work(2000) - work(1000)) * 2);
      expect(work(2000)).toBeGreaterThan(0);
    }
  });
});

describe('the order of answers', () => {
  /** What comes first is answered, and some of the rest, each with an answer that is found by a number. */
  function answersOf({ steps, inOrder }: StagedFlow, picks: readonly (readonly [step: number, answer: number])[]) {
    const given = new Map<string, Answer>();
    const give = (step: Step | undefined, nth: number) => {
      const answers = step ? [...answersByOutcome(step, { rig: {}, facts: {} }).values()] : [];
      if (step) given.set(step.id, answers[nth % answers.length] ?? { cannot: true });
    };
    for (const [i, step] of inOrder.entries()) give(step, picks[i % picks.length]?.[1] ?? 0);
    for (const [at, nth] of picks) give([...steps.values()][at % steps.size], nth);
    return [...given];
  }
  const picks = fc.array(fc.tuple(fc.nat(200), fc.nat(200)), { minLength: 2, maxLength: 15 });

  it.each(FLOWS)(
    'is of no matter to what is believed and concluded in %s, save for the place that work is going on at',
    (_, flow) => {
      let reckoned = 0;
      fc.assert(
        fc.property(picks, fc.infiniteStream(fc.nat(1000)), (chosen, luck) => {
          const given = answersOf(flow, chosen);
          const last = given.at(-1);
          if (!last) return;
          const shuffled = given
            .slice(0, -1)
            .map((one) => [luck.next().value ?? 0, one] as const)
            .toSorted(([a], [b]) => a - b)
            .map(([, one]) => one);
          const at = (order: typeof given) =>
            stand(
              flow,
              order.reduce<Case>((it_, [step, it__]) => answered(it_, step, it__), caseOn(flow)),
            );
          const [one, other] = [at([...shuffled, last]), at(given)];
          reckoned += one.decided?.reckoning ? 1 : 0;
          expect(openIn(one)).toBe(openIn(other));
          expect(one.rig).toEqual(other.rig);
          expect(one.decided?.reckoning?.shares).toEqual(other.decided?.reckoning?.shares);
          expect(one.decided?.reckoning?.certainty).toBe(other.decided?.reckoning?.certainty);
          const wrongWay = at(given.toReversed());
          expect(wrongWay.decided?.reckoning?.shares).toEqual(other.decided?.reckoning?.shares);
        }),
        { numRuns: 60 },
      );
      expect(reckoned).toBeGreaterThan(50);
    },
  );
});
