import { describe, expect, it } from 'vitest';
import { fromText } from '../../src/case/case-text.ts';
import { replay } from '../../src/case/replay.ts';
import { advise } from '../../src/proof/advise.ts';
import { PROVED_FLOWS } from '../../src/proof/flows.ts';
import { MODES, playTrial } from '../../src/proof/modes.ts';
import { type Failure, merged, prove, type Result, shortfalls } from '../../src/proof/prove.ts';
import { tableOf } from '../../src/proof/report.ts';
import { subjectOf } from '../../src/proof/subjects.ts';

/*
 * Every flow, played by random bikes against the circuit. This is a sample that takes seconds; `npm run prove` is the
 * whole. The targets stand with the modes.
 */

const BIKES = Array.from({ length: 14 }, (_, i) => i);
const SEED = 1;

const RESULTS = new Map(
  PROVED_FLOWS.map(({ id }) => [id, prove({ flow: id, seed: SEED, faultsPerBike: 2, bikes: BIKES })] as const),
);

describe.each(PROVED_FLOWS.map((proved) => [proved.id, proved] as const))(
  '%s, played by random bikes',
  { timeout: 120_000 },
  (id, proved) => {
    const result = RESULTS.get(id) ?? {};

    it.each(MODES.map((mode) => [mode.says, mode] as const))('meets its target with %s', (_, mode) => {
      const { cases, failures = [] } = result[mode.id] ?? {};
      expect(cases).toBeGreaterThan(0);
      const lines = failures.map(({ bike, faults, why, hardship }) => `${bike} ${faults}: ${why} (${hardship ?? ''})`);
      expect((cases ?? 0) - lines.length, lines.join('\n')).toBeGreaterThanOrEqual(mode.target * (cases ?? 0));
    });
    it('never tells anybody to do harm', () => {
      for (const { harmful } of Object.values(result)) expect(harmful).toBe(0);
    });
    it('replays each case that went wrong to the same verdict, from its saved text', () => {
      for (const { failures } of Object.values(result))
        for (const failure of failures) {
          const opened = fromText(failure.case);
          if (!opened.ok) throw new Error(opened.message);
          const { open } = replay(proved.flow, opened.case);
          expect('verdict' in open && failure.ways[0]?.includes(`→ ${open.verdict.id} `)).toBe(true);
        }
    });
  },
);

describe('the advice to check an answer again', () => {
  const [exact, oneFalse] = ['exact', 'false'].map((id) => MODES.find((mode) => mode.id === id) ?? expect.fail(id));
  const trials = (mode: (typeof MODES)[number] | undefined) =>
    PROVED_FLOWS.flatMap((proved) =>
      BIKES.flatMap((bike) => {
        const subject = subjectOf({ complaint: proved.id, seed: SEED + 1, faultsPerBike: 2 }, bike);
        return subject && mode ? mode.trials(proved, subject).map((trial) => ({ proved, trial })) : [];
      }),
    );
  const rechecked = ({ proved, trial }: ReturnType<typeof trials>[number]) =>
    playTrial(proved, { ...trial, advise }).rounds.flatMap((round) => round.rechecked);

  it('is given in fewer than one case in ten in which every answer is right', () => {
    const cases = trials(exact).map(rechecked);
    expect(cases.length).toBeGreaterThan(30);
    expect(cases.filter((steps) => steps.length > 0).length).toBeLessThan(cases.length / 10);
  });
  it('names the false answer more often than all others together', () => {
    const cases = trials(oneFalse).map((one) => ({ steps: rechecked(one), falseStep: one.trial.falseStep ?? '' }));
    const named = cases.filter(({ steps }) => steps.length > 0);
    expect(named.length).toBeGreaterThan(cases.length / 5);
    expect(named.filter(({ steps, falseStep }) => steps.includes(falseStep)).length).toBeGreaterThan(named.length / 2);
  });
});

describe('a proof', () => {
  const small = (bikes: readonly number[]) =>
    prove({ flow: 'no-rear-sound', seed: 5, faultsPerBike: 1, bikes, modes: ['exact', 'real'] });
  it('gives the same for the same seed, in one piece or in two', () => {
    const whole = small([0, 1, 2]);
    expect(small([0, 1, 2])).toEqual(whole);
    const halves = merged([small([0]), small([1, 2])]);
    expect(halves['real']).toEqual(whole['real']);
    expect(halves['two']?.cases).toBe(0);
  });
  it('says what it falls short of: a share below the target, and any harm', () => {
    const mode = (identified: number, harmful: number) => ({
      cases: 100,
      identified,
      cured: 100,
      harmful,
      failures: [],
    });
    const result: Result = { exact: mode(99, 0), real: mode(99, 1), believed: mode(98, 0), false: mode(90, 0) };
    expect(shortfalls(result)).toEqual([
      'exact: 99 of 100 went well, which is less than 100 %',
      'real: 1 fixes would do harm',
      'believed: 98 of 100 went well, which is less than 99 %',
    ]);
  });
  it('is printed with a line for each mode and the failures under it', () => {
    const failure: Failure = { flow: 'x', bike: '1/2', faults: 'fuse', why: 'not found', ways: ['a=b → c'], case: '' };
    const table = tableOf({ exact: { cases: 2, identified: 1, cured: 2, harmful: 0, failures: [failure, failure] } });
    expect(table).toMatch(/exact +2 +50\.0 % +100 % +100\.0 % +0 /);
    expect(table).toContain('    2 × fuse: not found\n        bike 1/2: a=b → c');
    expect(table).toMatch(/real +0 +– /);
  });
});
