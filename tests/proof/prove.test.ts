import { describe, expect, it } from 'vitest';
import { fromText } from '../../src/case/case-text.ts';
import { replay } from '../../src/case/replay.ts';
import { drawFrom } from '../../src/observe/draw.ts';
import { errsAlways, errsOnce, MODES, playTrial, rideOf, type Trial } from '../../src/proof/modes.ts';
import { add, type ModeResult, merged, NOTHING, type Proof, prove, type Result } from '../../src/proof/prove.ts';
import { tableOf } from '../../src/proof/report.ts';
import { falseAnswers, unableTo, withoutMeter } from '../../src/proof/rider.ts';
import { rightFor, steady } from '../../src/proof/riders.ts';
import { leftOut, loadStages } from '../../src/proof/stages.ts';
import { type Subject, subjectOf } from '../../src/proof/subjects.ts';
import { outcomeOf } from '../../src/steps/outcome.ts';

const stages = await loadStages();
const REAR = { 'no-rear-sound': 1 };
const flow = 'no-rear-sound';
const table = { flow, stages, turns: 2 };
const proof = (bikes: readonly number[], more: Partial<Proof> = {}): Proof => ({
  flow,
  complaints: REAR,
  seed: 3,
  faultsPerBike: 2,
  turns: 1,
  bikes,
  ...more,
});
const subjects = [0, 1, 2, 3, 4, 5].flatMap((i): readonly Subject[] =>
  [subjectOf({ complaints: REAR, seed: 3, faultsPerBike: 2 }, i) ?? []].flat(),
);
const mode = (id: string) => MODES.find((one) => one.id === id) ?? expect.fail(`no mode ${id}`);
const trialsOf = (id: string): readonly Trial[] => subjects.flatMap((subject) => mode(id).trials(table, subject));

describe('a bike of the proof', () => {
  it('has the complaint that it is there for, by faults that cause it, and not without', () => {
    expect(subjects.length).toBeGreaterThan(3);
    for (const { bikes, complaint, faults } of subjects) {
      expect(bikes.complains(complaint, [])).toBe(false);
      for (const present of faults) expect(bikes.complains(complaint, [present])).toBe(true);
    }
  });
  it('is the same for the same seed and number, and another for others', () => {
    const made = (seed: number, i: number) => subjectOf({ complaints: REAR, seed, faultsPerBike: 2 }, i)?.paper;
    expect(made(3, 1)).toEqual(made(3, 1));
    expect(made(3, 1)).not.toEqual(made(4, 1));
    expect(made(3, 1)).not.toEqual(made(3, 2));
  });
});

describe('proving', () => {
  const bikes = [0, 1, 2, 3, 4, 5];
  const modes = ['exact', 'no-meter', 'false', 'left-out'];
  const result = prove(proof(bikes, { modes }), stages);

  it('plays each mode that is asked for, and counts by case', () => {
    expect(Object.keys(result)).toEqual(modes);
    for (const own of Object.values(result)) {
      expect(own.cases).toBeGreaterThan(0);
      expect(own.first).toBeLessThanOrEqual(own.listed);
      expect(own.listed).toBeLessThanOrEqual(own.cases);
      expect(own.provedRight).toBeLessThanOrEqual(own.proved);
      expect(own.parts).toBeLessThanOrEqual(own.vain);
      expect(own.questions).toBeGreaterThan(own.cases);
    }
    expect(result['exact']?.cases).toBe(subjects.reduce((sum, { faults }) => sum + faults.length, 0));
  });
  it('gives the same for the same seed, however the bikes are shared out', () => {
    const parts = [bikes.slice(0, 2), bikes.slice(2, 3), bikes.slice(3)];
    // Sums of fractions differ in their last digits by the order in which they were added.
    const rounded = (of: Result): unknown =>
      JSON.parse(JSON.stringify(of, (_, value) => (typeof value === 'number' ? Number(value.toFixed(6)) : value)));
    expect(rounded(merged(parts.map((some) => prove(proof(some, { modes }), stages))))).toEqual(rounded(result));
  });
  it('keeps of what went wrong the case itself: opened again, it stands where the rider stood', () => {
    const failures = Object.values(prove(proof(bikes, { modes: ['left-out'] }), stages)).flatMap((own) => own.failures);
    expect(failures.length).toBeGreaterThan(0);
    for (const { case: text, why, ways } of failures) {
      expect(why).not.toBe('');
      expect(ways.length).toBeGreaterThan(0);
      const opened = fromText(text);
      if (!opened.ok) throw new Error(opened.message);
      const { flow: own, late } = stages[opened.case.flow] ?? expect.fail('no such flow');
      expect(replay(own, opened.case, late).terminals.length).toBeGreaterThan(0);
    }
  });
  it('adds up: nothing and a result are the result', () => {
    for (const own of Object.values(result)) expect(add(NOTHING, own)).toEqual(own);
  });
  it('counts what was right, vain, bought and harmful', () => {
    const one = (more: Partial<ModeResult>): ModeResult => ({ ...NOTHING, cases: 1, ...more });
    const sum = add(
      one({ vain: 2, parts: 1, harmful: 1, classes: { lamp: [1, 0] } }),
      one({ classes: { lamp: [1, 1] } }),
    );
    expect(sum).toMatchObject({ cases: 2, vain: 2, parts: 1, harmful: 1, classes: { lamp: [2, 1] } });
  });
  it('is shown to people in one line a mode', () => {
    const lines = tableOf(result, false).split('\n');
    expect(lines).toHaveLength(1 + modes.length);
    for (const [i, id] of modes.entries()) expect(lines[i + 1]).toMatch(new RegExp(`^${id} +${result[id]?.cases} `));
  });
});

describe('the modes', () => {
  it('have a name of their own each, and say what is hard about them', () => {
    const ids = MODES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { says } of MODES) expect(says).not.toBe('');
  });
  it.each(MODES.map(({ id }) => id))('“%s” plays the same cases whenever it is asked', (id) => {
    const [subject] = subjects;
    if (!subject) return expect.fail('no bike');
    const played = () => mode(id).trials(table, subject).map(playTrial);
    expect(played()).toEqual(played());
  });
  it('without a meter never read one', () => {
    for (const trial of trialsOf('no-meter')) {
      const { case: it_ } = playTrial(trial);
      for (const event of it_.events)
        if (event.type === 'answer') expect('readings' in event.answer, event.step).toBe(false);
    }
  });
  it('with two faults have two that are mended by different causes', () => {
    for (const { ride, faults } of trialsOf('two')) {
      expect(faults).toHaveLength(2);
      expect(ride.right.size).toBeGreaterThan(1);
      expect(ride.rightByIds).toBe(true);
    }
  });
  it('in turn are of steps that a careful rider is asked, as many as are wanted', () => {
    const [subject] = subjects;
    if (!subject) return expect.fail('no bike');
    const turns = mode('cannot').trials({ ...table, turns: Infinity }, subject);
    const few = mode('cannot').trials({ ...table, turns: 1 }, subject);
    expect(few).toHaveLength(subject.faults.length);
    expect(turns.length).toBeGreaterThan(few.length);
    for (const { hardship = '' } of turns) expect(hardship).toMatch(/^cannot [a-z0-9-]+$/);
  });
});

describe('left out', () => {
  /** One at least of every flow. */
  const CAUSES_OUT = [
    'rear-plug-off',
    'main-fuse-open',
    'paused-or-muted',
    'gain-too-high',
    'eq-by-design',
    'coil-open',
  ];
  it('takes every row of the cause from every table, and nothing else', () => {
    const without = leftOut(stages, CAUSES_OUT);
    for (const [id, { late, flow: own }] of Object.entries(stages)) {
      const rows = without[id]?.late.table.rows ?? [];
      const kept = late.table.rows.filter(({ cause }) => !CAUSES_OUT.includes(cause));
      expect(rows).toEqual(kept);
      // A flow that only sends on has no cause in its table.
      if (own.causes.length > 0) expect(rows.length).toBeLessThan(late.table.rows.length);
      expect(without[id]?.flow).toBe(own);
      expect(without[id]?.late.causes).toBe(late.causes);
    }
  });
  it('is the cause of the bike in each of its cases, and never right', () => {
    const trials = trialsOf('left-out');
    expect(trials.length).toBeGreaterThan(0);
    for (const { ride } of trials) {
      const rows = Object.values(ride.stages).flatMap(({ late }) => late.table.rows);
      expect(rows.filter(({ cause }) => ride.right.has(cause))).toEqual([]);
    }
  });
});

describe('the riders', () => {
  const [subject] = subjects;
  if (!subject) throw new Error('no bike');
  const [present] = subject.faults;
  if (!present) throw new Error('no fault');
  const bike = subject.bikes.with([present]);
  const sees = steady(['riders']);
  const situation = { rig: subject.paper, facts: {} };
  const step = (id: string) => stages[flow]?.flow.steps.get(id) ?? expect.fail(`no step ${id}`);
  const fader = step('fader-centre');
  const meaning = (answer: ReturnType<typeof sees>) =>
    outcomeOf(fader, { ...situation, facts: { [fader.id]: answer } });

  it('know what is right by the ids of the faults, over all flows', () => {
    expect(rightFor(stages, [present]).size).toBe(1);
  });
  it('that err once see it right the second time', () => {
    const errs = errsOnce(fader.id, sees, drawFrom('err'));
    const truth = sees(fader, bike, situation);
    expect(meaning(errs(fader, bike, situation))).not.toBe(meaning(truth));
    expect(errs(fader, bike, situation)).toEqual(truth);
    expect(errs(step('rear-control'), bike, situation)).toEqual(sees(step('rear-control'), bike, situation));
  });
  it('that err and repeat it say the same wrong thing again', () => {
    const errs = errsAlways(fader.id, sees, drawFrom('err'));
    const first = errs(fader, bike, situation);
    expect(meaning(first)).not.toBe(meaning(sees(fader, bike, situation)));
    expect(errs(fader, bike, situation)).toEqual(first);
  });
  it('err in ways that mean something else, one for each meaning', () => {
    for (const id of ['fader-centre', 'run-ohms', 'wire-to-frame']) {
      const truth = sees(step(id), bike, situation);
      const wrong = falseAnswers(step(id), truth, situation);
      const means = (answer: typeof truth) =>
        outcomeOf(step(id), { ...situation, facts: { ...situation.facts, [id]: answer } });
      expect(wrong.length, id).toBeGreaterThan(0);
      expect(wrong.map(means)).not.toContain(means(truth));
      expect(new Set(wrong.map(means)).size).toBe(wrong.length);
    }
  });
  it('that cannot do a step cannot do that one only', () => {
    const cannot = unableTo(fader.id, sees);
    expect(cannot(fader, bike, situation)).toEqual({ cannot: true });
    expect(cannot(step('rear-control'), bike, situation)).toEqual(sees(step('rear-control'), bike, situation));
  });
  it('without a meter say so, and read none', () => {
    const none = withoutMeter(sees);
    expect(none(step('tools-at-hand'), bike, situation)).toEqual({ option: 'none' });
    expect(none(step('run-ohms'), bike, situation)).toEqual({ cannot: true });
    expect(none(fader, bike, situation)).toEqual(sees(fader, bike, situation));
  });
  it('know their bike as its papers say, or as its owner tells it', () => {
    const ride = rideOf(table, subject, [present], subject.paper, sees);
    expect(ride.believed).toBe(subject.paper);
    expect(ride.complains(ride.bike)).toBe(true);
  });
});
