import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import type { Flow } from '../../machines/kit.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { answered } from '../../src/case/change.ts';
import { replay } from '../../src/case/replay.ts';
import { assumedFor } from '../../src/causes/assumed.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { offered, usable } from '../../src/steps/outcome.ts';
import type { Answer, Facts, Step } from '../../src/steps/step.ts';
import type { Remedy } from '../../src/verdicts/verdict.ts';
import { caseOn } from '../journey.ts';
import { anyRig } from '../rig/any-rig.ts';

/*
 * Nobody may be left standing: whatever is fitted, whatever is answered, in whatever order of "I can't". Every flow ends
 * in a verdict that is whole.
 */

const FLOWS: readonly Flow[] = [noRearSound, ampWontTurnOn, isAReflashNeeded, whatIsInTheHeadUnit];
/** More answers than any rider would give. */
const MOST_ANSWERS = 40;

const VOLTS = ['0', '0.01', '0.2', '0.5', '0.55', '1.1', '1.6', '2', '2.2', '3.3', '4.5', '6', '8.4', '12'];
const OHMS = ['0.3', '0.9', '1.7', '3.4', '4.4', '5.2', '12', '60', '5 kΩ', 'OL'];

/** Choices by number, as many as a way through a flow needs: the same number gives the same way again. */
type Luck = (nth: number) => number;
const luck = fc.nat(2 ** 31 - 1);
/** A linear congruential generator. Its period is full, since 4 divides the multiplier less 1 (theorem of Hull and Dobell). */
const luckOf = (seed: number): Luck => {
  const drawn: number[] = [];
  return (nth) => {
    while (drawn.length <= nth) drawn.push((Math.imul(drawn.at(-1) ?? seed, 0x915f77f5) + 0x6d2b79f5) >>> 0);
    return (drawn[nth] ?? 0) >>> 8;
  };
};

/** Any answer to a step: an option, or readings as a meter may show them. What cannot be used becomes "I can't". */
function anyAnswerTo(step: Step, pick: <T>(from: readonly T[]) => T, rig: Rig, facts: Facts): Answer {
  if (step.kind !== 'reading') return { option: pick(offered(step, { rig, facts }).map(([option]) => option)) };
  const own: Readonly<Record<string, readonly string[]>> = {
    batteryV: ['12.4'],
    leadsOhm: ['0.2', '0.4'],
    residueV: ['0', '0.05', '0.6'],
    plusV: ['0', '3.5', '6.2', '12.4'],
    minusV: ['0', '3.5', '6.2', '12.4'],
  };
  const readings = Object.fromEntries(
    Object.entries(step.readings).map(([name, { unit }]) => [name, pick(own[name] ?? (unit === 'Ω' ? OHMS : VOLTS))]),
  );
  return usable(step, { readings }, { rig, facts }) ? { readings } : { cannot: true };
}

type Choose = (step: Step, nth: number) => 'cannot' | 'any';
interface End {
  readonly asked: readonly string[];
  readonly answers: readonly (readonly [step: string, answer: Answer])[];
  readonly verdict: string;
  readonly remedy: Remedy;
}

/** Walks a flow answer by answer, the way its page does, until it stands at a verdict. */
function walk(flow: Flow, rig: Rig, way: Luck, choose: Choose): End {
  let [snapshot] = initialTransition(flow.machine, { rig, facts: {} });
  const answers: (readonly [string, Answer])[] = [];
  let at = 0;
  const pick = <T>(from: readonly T[]): T => from[way(at++) % from.length] as T;
  while (snapshot.status !== 'done') {
    const state = flow.states[String(snapshot.value)];
    if (!state || !('ask' in state)) throw new Error(`${flow.id} stands in ${String(snapshot.value)} and asks nothing`);
    const { context } = snapshot;
    const { ask: step } = state;
    const answer: Answer =
      choose(step, answers.length) === 'cannot'
        ? { cannot: true }
        : anyAnswerTo(step, pick, context.rig, context.facts);
    answers.push([step.id, answer]);
    if (answers.length > MOST_ANSWERS) throw new Error(`no end after ${answers.map(([id]) => id).join(' ')}`);
    [snapshot] = transition(flow.machine, snapshot, { type: 'answer', step: step.id, answer });
  }
  return { asked: answers.map(([id]) => id), answers, ...snapshot.output };
}

const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
};

/** Verdicts after which there is nothing to do, so that it may take no time. */
const COSTS_NOTHING = ['plan-nothing-to-do', 'plan-stay', 'plan-same-eq-without-amp', 'plan-same-eq-unaltered-amp'];

/** Everything that a rider reads must be there and be written for a person. */
function expectWhole(verdict: string, remedy: Remedy): void {
  for (const part of ['what', 'howSure', 'proof', 'tools', 'who'] as const) expect(remedy[part]).toMatch(/\S/);
  expect(remedy.fix.length).toBeGreaterThan(0);
  if (!COSTS_NOTHING.includes(verdict)) expect(remedy.minutes, verdict).toBeGreaterThan(0);
  expect(remedy.minutes).toBeLessThan(1000);
  expect(['proved', 'likely', 'short list']).toContain(remedy.certainty);
  for (const caution of remedy.cautions) expect(CAUTIONS).toHaveProperty(caution);
  for (const text of textsIn(remedy)) {
    expect(text).toMatch(/\S/);
    expect(text).not.toMatch(/undefined|null|NaN|Infinity|\[object|e[+-]\d|\d\.\d{4,}|-0\b/);
  }
  for (const { label, value } of remedy.numbers) expect(`${label}${value}`).not.toMatch(/ {2}|^ | $/);
}

const anyWay: Choose = () => 'any';
const check = (flow: Flow, numRuns: number, choose: (way: Luck) => Choose) =>
  fc.assert(
    fc.property(anyRig, luck, (rig, seed) => {
      const way = luckOf(seed);
      const end = walk(flow, rig, way, choose(way));
      expect(new Set(end.asked).size, end.asked.join(' ')).toBe(end.asked.length);
      expectWhole(end.verdict, end.remedy);
    }),
    { numRuns },
  );

describe.each(FLOWS.map((flow) => [flow.id, flow] as const))('%s', { timeout: 60_000 }, (_, flow) => {
  it(`ends in a whole verdict within ${MOST_ANSWERS} answers and asks nothing twice, whatever is answered`, () => {
    check(flow, 300, () => anyWay);
  });
  it('does so with “I can’t” as any one of its answers', () => {
    check(flow, 300, (way) => (_step, i) => (i === way(200) % 20 ? 'cannot' : 'any'));
  });
  it('does so with “I can’t” strewn in at random', () => {
    check(flow, 300, (way) => (_step, i) => (way(200 + i) % 3 === 0 ? 'cannot' : 'any'));
  });
  it('does so with every measurement “I can’t”', () => {
    check(flow, 200, () => (step) => (step.tool === 'meter' ? 'cannot' : 'any'));
  });
  it('does so with nothing but “I can’t”', () => {
    check(flow, 60, () => () => 'cannot');
  });

  it('stands where the same answers led, when they are replayed, each time', () => {
    fc.assert(
      fc.property(anyRig, luck, (rig, seed) => {
        const way = luckOf(seed);
        const { answers, verdict, remedy } = walk(flow, rig, way, (_step, i) =>
          way(200 + i) % 5 === 0 ? 'cannot' : 'any',
        );
        const it_ = answers.reduce((so, [step, answer]) => answered(so, step, answer), caseOn(flow, rig));
        const { findings: _, ...once } = replay(flow, it_);
        const { findings: __, ...twice } = replay(flow, it_);
        expect(twice).toEqual(once);
        expect('verdict' in once.open && once.open.verdict.id).toBe(verdict);
        expect('remedy' in once.open && once.open.remedy).toEqual(remedy);
        expect(once.terminals.map(({ step }) => step.id)).toEqual(answers.map(([step]) => step));
      }),
      { numRuns: 100 },
    );
  });
  it('lists what it assumed as numbers with their unit and range', () => {
    fc.assert(
      fc.property(anyRig, luck, (rig, seed) => {
        const { answers } = walk(flow, rig, luckOf(seed), anyWay);
        const it_ = answers.reduce((so, [step, answer]) => answered(so, step, answer), caseOn(flow, rig));
        const standing = replay(flow, it_);
        if (!('verdict' in standing.open)) throw new Error('no verdict');
        const { verdict } = standing.open;
        for (const line of assumedFor((findings) => verdict.remedy(findings), standing.findings)) {
          expect(line).not.toMatch(/undefined|NaN|Infinity|\d\.\d{4,}/);
          expect(line).toMatch(/^\S.*: \S/);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the ways that were walked', () => {
  const verdictsOf = (flow: Flow) =>
    new Set(Object.values(flow.states).flatMap((state) => ('verdict' in state ? [state.verdict.id] : [])));
  const RIGS: readonly Rig[] = [{}, ...Object.values(EXAMPLE_RIGS)];
  it.each(FLOWS.map((flow) => [flow.id, flow] as const))(
    'reach more than half of the verdicts of %s, so that the claims above are not empty',
    (_, flow) => {
      const reached = new Set<string>();
      for (let seed = 0; seed < 500; seed++) {
        reached.add(walk(flow, RIGS[seed % RIGS.length] ?? {}, luckOf(seed), anyWay).verdict);
      }
      const all = verdictsOf(flow);
      expect([...reached].filter((id) => !all.has(id))).toEqual([]);
      expect(reached.size).toBeGreaterThan(all.size / 2);
    },
  );
});

describe('a bike of which nothing is known', () => {
  it.each(FLOWS.map((flow) => [flow.id, flow] as const))('gets to the end of %s without a single answer', (_, flow) => {
    const { verdict, remedy } = walk(flow, {}, luckOf(0), () => 'cannot');
    expect(Object.values(flow.states).some((s) => 'verdict' in s && s.verdict.id === verdict)).toBe(true);
    expect(remedy.certainty).toBe('short list');
  });
});
