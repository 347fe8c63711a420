import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entropyBits, expectedBits } from '../../src/inference/gain.ts';
import { type Knowledge, posterior } from '../../src/inference/posterior.ts';
import { compile, type Table } from '../../src/inference/table.ts';
import { anyCase } from './any-table.ts';
import { amongNamed, knowing, NO_SLIPS, NOTHING_KNOWN, row, seen } from './tables.ts';

/** Bits that a step is expected to give to somebody who never slips, given that it is one of the causes in the table. */
const bitsOf = (table: Table, step: string, known: Knowledge = NOTHING_KNOWN): number => {
  const model = compile(table);
  return expectedBits(model, amongNamed(model, posterior(model, known, NO_SLIPS)), step, NO_SLIPS);
};

describe('the entropy', () => {
  it('of twelve balls of which one is odd, heavy or light, is log₂ 24 bits (MacKay, exercise 4.1)', () => {
    expect(entropyBits(Array(24).fill(1 / 24))).toBeCloseTo(4.585, 3);
  });
  it('of nine days that are fit for play and five that are not is 0.940 bits (Quinlan 1986, section 4)', () => {
    expect(entropyBits([9 / 14, 5 / 14])).toBeCloseTo(0.94, 3);
  });
  it('of what is certain is nothing', () => {
    expect(entropyBits([0, 1, 0])).toBe(0);
  });
});

/**
 * One of twelve balls is odd, heavy or light, and a balance has balls on its pans. MacKay, Information Theory, Inference,
 * and Learning Algorithms (2003), exercise 4.1; the bits of all first weighings from his lecture on it.
 */
const BALLS = Array.from({ length: 12 }, (_, i) => i + 1);
const weighing = (left: readonly number[], right: readonly number[]) => (ball: number, heavy: boolean) =>
  left.includes(ball) === right.includes(ball) ? [0, 1, 0] : left.includes(ball) === heavy ? [1, 0, 0] : [0, 0, 1];
const balance = (weighings: Readonly<Record<string, ReturnType<typeof weighing>>>): Table => ({
  steps: Object.fromEntries(Object.keys(weighings).map((name) => [name, ['left', 'level', 'right']])),
  rows: BALLS.flatMap((ball) =>
    [true, false].map((heavy) =>
      row(
        `${ball} ${heavy ? 'heavy' : 'light'}`,
        Object.fromEntries(Object.entries(weighings).map(([name, shows]) => [name, shows(ball, heavy)])),
      ),
    ),
  ),
});
const ballsAgainst = (count: number) => weighing(BALLS.slice(0, count), BALLS.slice(count, 2 * count));

describe('the expected information of a weighing of MacKay’s twelve balls', () => {
  const first = balance(
    Object.fromEntries([1, 2, 3, 4, 5, 6].map((count) => [`${count}v${count}`, ballsAgainst(count)])),
  );

  it('is 1 bit for 6 against 6, 1.48 for 5 against 5, and most for 4 against 4: log₂ 3', () => {
    expect(bitsOf(first, '6v6')).toBeCloseTo(1, 6);
    expect(bitsOf(first, '5v5')).toBeCloseTo(1.483, 3);
    expect(bitsOf(first, '4v4')).toBeCloseTo(1.585, 3);
  });
  it('is 1.5 bits for 3 against 3, 1.25 for 2 against 2 and 0.82 for 1 against 1', () => {
    expect(bitsOf(first, '3v3')).toBeCloseTo(1.5, 6);
    expect(bitsOf(first, '2v2')).toBeCloseTo(1.25, 2);
    expect(bitsOf(first, '1v1')).toBeCloseTo(0.82, 2);
  });
  // Eight are left after the first weighing. The lecture: 3/8, 2/8, 3/8 is "a little bit bigger than 1.5"; 2/8, 4/8, 2/8 is 1.5.
  it('is 1.56 bits for the best second one, and 1.5 for one that leaves half of the rest on the table', () => {
    const table = balance({
      first: ballsAgainst(4),
      best: weighing([1, 2, 5], [3, 4, 6]),
      fair: weighing([1, 5], [2, 6]),
    });
    const known = knowing([seen('first', 'left')]);
    expect(bitsOf(table, 'best', known)).toBeCloseTo(1.561, 3);
    expect(bitsOf(table, 'fair', known)).toBeCloseTo(1.5, 6);
  });
});

describe('the information gain of the fourteen days of weather', () => {
  // Quinlan, Induction of Decision Trees, Machine Learning 1 (1986), table 1; Mitchell, Machine Learning (1997), table 3.2.
  const DAYS = `
    sunny    hot  high   weak   no
    sunny    hot  high   strong no
    overcast hot  high   weak   yes
    rain     mild high   weak   yes
    rain     cool normal weak   yes
    rain     cool normal strong no
    overcast cool normal strong yes
    sunny    mild high   weak   no
    sunny    cool normal weak   yes
    rain     mild normal weak   yes
    sunny    mild normal strong yes
    overcast mild high   strong yes
    overcast hot  normal weak   yes
    rain     mild high   strong no`
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/ +/));
  const STEPS = {
    outlook: ['sunny', 'overcast', 'rain'],
    temperature: ['hot', 'mild', 'cool'],
    humidity: ['high', 'normal'],
    wind: ['weak', 'strong'],
  };
  const playOn = (days: readonly (readonly string[])[]): Table => ({
    steps: STEPS,
    rows: ['yes', 'no'].map((play) => {
      const such = days.filter((day) => day[4] === play);
      const share = (at: number, value: string) => such.filter((day) => day[at] === value).length / such.length;
      return row(
        play,
        Object.fromEntries(
          Object.entries(STEPS).map(([step, names], at) => [step, names.map((name) => share(at, name))]),
        ),
        such.length,
      );
    }),
  });

  // Witten, Frank and Hall, Data Mining, section 4.3 prints these; the two papers 0.246 and 0.151, from rounded entropies.
  it('is 0.247 bits for outlook, 0.152 for humidity, 0.048 for wind and 0.029 for temperature', () => {
    const table = playOn(DAYS);
    expect(bitsOf(table, 'outlook')).toBeCloseTo(0.247, 3);
    expect(bitsOf(table, 'humidity')).toBeCloseTo(0.152, 3);
    expect(bitsOf(table, 'wind')).toBeCloseTo(0.048, 3);
    expect(bitsOf(table, 'temperature')).toBeCloseTo(0.029, 3);
  });
  // Mitchell, figure 3.4: 0.970, 0.570 and 0.019, again from rounded entropies.
  it('is 0.971 bits for humidity on the five sunny days, 0.571 for temperature and 0.020 for wind', () => {
    const sunny = playOn(DAYS.filter(([outlook]) => outlook === 'sunny'));
    expect(bitsOf(sunny, 'humidity')).toBeCloseTo(0.971, 3);
    expect(bitsOf(sunny, 'temperature')).toBeCloseTo(0.571, 3);
    expect(bitsOf(sunny, 'wind')).toBeCloseTo(0.02, 3);
  });
});

describe('the expected bits, in any table and after any answers', () => {
  it('are never below nought, nor above what is uncertain', () => {
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const model = compile(table);
        const believed = posterior(model, known);
        for (const step of model.steps.keys()) {
          const bits = expectedBits(model, believed, step);
          expect(bits).toBeGreaterThanOrEqual(0);
          expect(bits).toBeLessThanOrEqual(entropyBits(believed.causes) + 1e-9);
        }
      }),
    );
  });
  it('are nought, and not a rounding error below it, for a step that all answer alike', () => {
    const model = compile({
      steps: { lamp: ['on', 'off'] },
      rows: [row('fuse', { lamp: [0.3, 0.7] }), row('lead', { lamp: [0.3, 0.7] }, 2)],
    });
    expect(expectedBits(model, posterior(model, NOTHING_KNOWN), 'lamp')).toBe(0);
  });
  it('are fewer for somebody who slips now and then', () => {
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const model = compile(table);
        const believed = posterior(model, known);
        for (const step of model.steps.keys())
          expect(expectedBits(model, believed, step)).toBeLessThanOrEqual(
            expectedBits(model, believed, step, NO_SLIPS) + 1e-9,
          );
      }),
    );
  });
  it('are what the answers take off the uncertainty in the end, each as often as it comes', () => {
    /** The same with every outcome given by every cause now and then: one that none gives says nothing. */
    const withAll = ({ steps, rows }: Table): Table => ({
      steps,
      rows: rows.map((one) => ({
        ...one,
        shows: Object.fromEntries(
          Object.entries(one.shows).map(([step, shares]) => [
            step,
            shares.map((share) => 0.9 * share + 0.1 / shares.length),
          ]),
        ),
      })),
    });
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const model = compile(withAll(table));
        const believed = posterior(model, known);
        for (const [step, names] of Object.entries(table.steps)) {
          if (known.observations.some((one) => one.step === step)) continue;
          const after = names.map((name) =>
            posterior(model, { ...known, observations: [...known.observations, seen(step, name)] }),
          );
          const comes = after.map(({ evidence }) => evidence / believed.evidence);
          expect(comes.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
          const left = after.reduce((sum, { causes }, o) => sum + (comes[o] as number) * entropyBits(causes), 0);
          expect(expectedBits(model, believed, step)).toBeCloseTo(entropyBits(believed.causes) - left, 9);
        }
      }),
    );
  });
  it('are none for a step that the table does not know', () => {
    const model = compile({ steps: {}, rows: [row('fuse', {})] });
    expect(expectedBits(model, posterior(model, NOTHING_KNOWN), 'lamp')).toBe(0);
  });
});
