import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Findings, findingsFrom } from '../../src/steps/outcome.ts';
import { oneEach, rank, type Suspect, shareInWords, stillPossible } from '../../src/verdicts/suspects.ts';

/** Three who can be behind a pump that does not start; weights and factors are made up for the test. */
const fuse: Suspect = {
  verdict: 'fuse',
  title: 'Fuse',
  weight: 6,
  signs: { hum: ['silent'], lamp: ['off'] },
  odds: { 'last-change': { storm: 3 } },
  split: 'Look at it.',
};
const motor: Suspect = {
  verdict: 'motor',
  title: 'Motor',
  weight: 3,
  signs: { hum: ['silent', 'hums'], lamp: ['on'] },
  odds: { 'last-change': { storm: 0.5 }, age: { old: 2 } },
  split: 'Turn the shaft.',
};
const shaft: Suspect = { verdict: 'shaft', title: 'Shaft', weight: 1, signs: { hum: ['hums'] }, split: 'Turn it.' };
const ALL = [motor, shaft, fuse];

const knowing = (outcomes: Readonly<Record<string, string>>): Findings =>
  findingsFrom(
    { rig: {}, facts: {} },
    (id) => outcomes[id],
    () => ({}),
  );
const ranked = (outcomes: Readonly<Record<string, string>>) => rank(ALL, knowing(outcomes));
const shares = (outcomes: Readonly<Record<string, string>>) =>
  Object.fromEntries(ranked(outcomes).map(({ suspect, shareRatio }) => [suspect.verdict, shareRatio]));

describe('the ranking of suspects', () => {
  it('is by weight while nothing is known, each with its share of all weights', () => {
    expect(ranked({}).map(({ suspect }) => suspect.verdict)).toEqual(['fuse', 'motor', 'shaft']);
    expect(shares({})).toEqual({ fuse: 0.6, motor: 0.3, shaft: 0.1 });
  });
  it('takes away all odds of a suspect that an answer speaks against, and names the step', () => {
    const [first, second, third] = ranked({ hum: 'hums' });
    expect([first, second].map((one) => one?.suspect.verdict)).toEqual(['motor', 'shaft']);
    expect([first?.shareRatio, second?.shareRatio]).toEqual([0.75, 0.25]);
    expect(third).toMatchObject({ shareRatio: 0, against: ['hum'] });
  });
  it('lists those that most answers speak against last', () => {
    const last = ranked({ hum: 'hums', lamp: 'on' });
    expect(last.map(({ suspect, against }) => [suspect.verdict, against])).toEqual([
      ['motor', []],
      ['shaft', []],
      ['fuse', ['hum', 'lamp']],
    ]);
  });
  it('says nothing about a suspect by a step that it does not name', () => {
    expect(shares({ lamp: 'on' })['shaft']).toBe(1 / 4);
    expect(shares({ smell: 'burnt' })).toEqual(shares({}));
  });
  it('multiplies the odds by history, and never rules anybody out by it', () => {
    expect(shares({ 'last-change': 'storm' })).toEqual({ fuse: 18 / 20.5, motor: 1.5 / 20.5, shaft: 1 / 20.5 });
    expect(shares({ age: 'old', 'last-change': 'storm' })['motor']).toBeCloseTo(3 / 22, 12);
    expect(ranked({ age: 'old', 'last-change': 'storm' }).every(({ against }) => against.length === 0)).toBe(true);
  });
  it('does not weigh a history that nobody gave factors for', () => {
    expect(shares({ age: 'new', 'last-change': 'wash' })).toEqual(shares({}));
  });
  it.each(['cannot', 'unclear'])('takes “%s” as unknown, neither for nor against anybody', (outcome) => {
    expect(shares({ hum: outcome, lamp: outcome })).toEqual(shares({}));
    expect(shares({ 'last-change': outcome, age: outcome })).toEqual(shares({}));
  });
  it('leaves nobody, with no share, when every suspect is spoken against', () => {
    const none = rank([fuse, motor], knowing({ hum: 'hums', lamp: 'off' }));
    expect(stillPossible(none)).toEqual([]);
    expect(none.map(({ shareRatio }) => shareRatio)).toEqual([0, 0]);
  });
  it('does not change the list that it was given', () => {
    const before = [...ALL];
    ranked({ hum: 'hums' });
    expect(ALL).toEqual(before);
  });

  const steps = ['hum', 'lamp', 'last-change', 'age', 'smell'];
  const outcomes = fc.dictionary(
    fc.constantFrom(...steps),
    fc.constantFrom('silent', 'hums', 'on', 'off', 'storm', 'old', 'cannot', 'unclear'),
  );
  const suspects = fc.array(
    fc.record({
      verdict: fc.string(),
      title: fc.string(),
      weight: fc.integer({ min: 1, max: 20 }),
      signs: fc.dictionary(
        fc.constantFrom('hum', 'lamp'),
        fc.subarray(['silent', 'hums', 'on', 'off'], { minLength: 1 }),
      ),
      odds: fc.dictionary(
        fc.constantFrom('last-change', 'age'),
        fc.dictionary(fc.constantFrom('storm', 'old'), fc.constantFrom(0.05, 0.5, 2, 6)),
      ),
      split: fc.string(),
    }),
    { maxLength: 12 },
  );
  it('gives shares that sum to 1 as long as anybody is left, likeliest first', () => {
    fc.assert(
      fc.property(suspects, outcomes, (list, known) => {
        const all = rank(list, knowing(known));
        const possible = stillPossible(all);
        expect(all).toHaveLength(list.length);
        expect(all.slice(0, possible.length)).toEqual(possible);
        const sum = possible.reduce((so, { shareRatio }) => so + shareRatio, 0);
        if (possible.length > 0) expect(sum).toBeCloseTo(1, 9);
        for (const [i, { shareRatio }] of possible.entries()) {
          expect(shareRatio).toBeGreaterThan(0);
          expect(shareRatio).toBeLessThanOrEqual(possible[i - 1]?.shareRatio ?? 1);
        }
      }),
    );
  });
  it('rules nobody in again by one more answer', () => {
    fc.assert(
      fc.property(
        suspects,
        outcomes,
        fc.constantFrom(...steps),
        fc.constantFrom('on', 'hums', 'cannot'),
        (list, known, step, more) => {
          fc.pre(!(step in known));
          const before = new Set(stillPossible(rank(list, knowing(known))).map(({ suspect }) => suspect));
          const after_ = stillPossible(rank(list, knowing({ ...known, [step]: more })));
          expect(after_.every(({ suspect }) => before.has(suspect))).toBe(true);
        },
      ),
    );
  });
});

describe('one row for each verdict', () => {
  const onFactory: Suspect = { ...fuse, weight: 2, signs: { 'unit-kind': ['factory'], lamp: ['off'] } };
  const onReplaced: Suspect = { ...fuse, weight: 4, signs: { 'unit-kind': ['replaced'], lamp: ['off', 'on'] } };
  const rowOf = (outcomes: Readonly<Record<string, string>>) =>
    oneEach(rank([onFactory, motor, onReplaced], knowing(outcomes))).find(({ suspect }) => suspect.verdict === 'fuse');

  it('has the odds of all its rows', () => {
    // 2 and 4 of the fuse, 3 of the motor.
    expect(rowOf({})?.shareRatio).toBeCloseTo(6 / 9, 12);
    expect(rowOf({ 'unit-kind': 'factory' })?.shareRatio).toBeCloseTo(2 / 5, 12);
  });
  it('is ruled out by what speaks against it on this build, not by the build of another row', () => {
    expect(rowOf({ 'unit-kind': 'factory', lamp: 'on' })?.against).toEqual(['lamp']);
  });
  it('stands where the sum of its rows puts it', () => {
    const list = [{ ...motor, weight: 5 }, onFactory, onReplaced];
    expect(oneEach(rank(list, knowing({}))).map(({ suspect }) => suspect.verdict)).toEqual(['fuse', 'motor']);
  });
});

describe('shareInWords', () => {
  it.each([
    [1, 'the only one left'],
    [0.995, 'the only one left'],
    [0.994, 'more than 9 in 10'],
    [0.95, 'more than 9 in 10'],
    [0.949, 'about 9 in 10'],
    [0.5, 'about 5 in 10'],
    [0.05, 'about 1 in 10'],
    [0.0499, 'less than 1 in 10'],
    [0, 'less than 1 in 10'],
  ])('calls %f %s', (share, words) => expect(shareInWords(share)).toBe(words));
});
