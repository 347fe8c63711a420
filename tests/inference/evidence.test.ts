import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doubts } from '../../src/inference/doubt.ts';
import { evidence } from '../../src/inference/evidence.ts';
import { reckoned } from '../../src/inference/pairs.ts';
import { posterior, ranked, shareOf } from '../../src/inference/posterior.ts';
import { compile } from '../../src/inference/table.ts';
import { expectClose } from '../compute/close.ts';
import { anyCase } from './any-table.ts';
import { knowing, rightOrWrong, row, seen } from './tables.ts';

describe('the evidence of one answer', () => {
  // Jaynes, Probability Theory: The Logic of Science (2003), section 4.2, from memory: a machine that makes a third bad
  // ones against one that makes a sixth. A bad one moves the odds by 3 dB, a good one by −0.97: log₂ 2 and log₂ 0.8 bits.
  it('is 1 bit for a bad one and −0.32 for a good one from Jaynes’s two machines, less what slips and others take off', () => {
    const model = compile({
      steps: { widget: ['bad', 'good'] },
      rows: [row('third', { widget: [1 / 3, 2 / 3] }), row('sixth', { widget: [1 / 6, 5 / 6] })],
    });
    const [bad] = evidence(model, knowing([seen('widget', 'bad')]))('third');
    const [good] = evidence(model, knowing([seen('widget', 'good')]))('third');
    expect(bad?.bits).toBeLessThan(1);
    expect(bad?.bits).toBeGreaterThan(0.9);
    expect(good?.bits).toBeGreaterThan(Math.log2(0.8));
    expect(good?.bits).toBeLessThan(Math.log2(0.8) + 0.03);
  });
});

/* Made up for the test. */
const places = rightOrWrong(['a1', 'a2', 'b1'], { a: ['a1', 'a2'], b: ['b1'], c: [] });

describe('the evidence for a cause', () => {
  const model = compile(places);
  const moved = (cause: string, ...answers: readonly (readonly [string, string])[]) =>
    evidence(model, knowing(answers.map(([step, outcome]) => seen(step, outcome))))(cause);

  it('speaks for it where it gives the answer and others do not, and against it the other way round', () => {
    const [own] = moved('a', ['a1', 'wrong']);
    expect(own).toMatchObject({ step: 'a1', outcome: 'wrong' });
    expect(own?.bits).toBeGreaterThan(4);
    expect(moved('b', ['a1', 'wrong'])[0]?.bits).toBeLessThan(-4);
  });
  it('has the strongest answer first, whichever way it speaks', () => {
    const all = moved('a', ['b1', 'right'], ['a1', 'wrong'], ['a2', 'right']);
    const strengths = all.map(({ bits }) => Math.abs(bits));
    expect(strengths).toEqual(strengths.toSorted((x, y) => y - x));
    expect(all.at(-1)?.step).toBe('b1');
  });
  it('is weaker for the second of two answers that say the same under one condition', () => {
    const apart = evidence(model, knowing([seen('a1', 'wrong'), seen('a2', 'wrong')]))('a');
    const group = 'meter on ohms';
    const together = evidence(model, knowing([seen('a1', 'wrong', { group }), seen('a2', 'wrong', { group })]))('a');
    expect(together[0]?.bits).toBeLessThan(0.8 * (apart[0]?.bits ?? 0));
  });
  it('leaves out answers of which the table says nothing', () => {
    expect(moved('a', ['colour', 'red'], ['a1', 'loose'])).toEqual([]);
  });
  it('of a single answer is what takes the odds from where they were to where they are, in any table', () => {
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const any = compile(table);
        const odds = (answers: typeof known.observations) => {
          const share = shareOf(any, posterior(any, { ...known, observations: answers }), 'cause-0');
          return share / (1 - share);
        };
        for (const one of known.observations)
          for (const { bits } of evidence(any, { ...known, observations: [one] })('cause-0'))
            expectClose(2 ** bits * odds([]), odds([one]), 1e-6);
      }),
    );
  });
});

describe('what an answer can be said to speak for', () => {
  /* Kass & Raftery, Bayes Factors, J. Am. Stat. Assoc. 90 (1995), table in section 3.2, from memory: a ratio of 1 to 3 is
     not worth more than a bare mention. From 4 on it speaks against something here. */
  const speaksOf = (own: number, others: number, cause = 'one') => {
    const model = compile({
      steps: { lamp: ['on', 'off'], volts: ['full', 'none'] },
      rows: [
        row('one', { lamp: [own, 1 - own], volts: [0.9, 0.1] }, 5),
        row('other', { lamp: [others, 1 - others], volts: [0.5, 0.5] }, 5),
      ],
    });
    return evidence(
      model,
      knowing([seen('lamp', 'on'), seen('volts', 'full')]),
    )(cause).find(({ step }) => step === 'lamp')?.speaks;
  };
  it('is against a cause only where all else gives it much more often', () => {
    expect(speaksOf(0.1, 0.9)).toBe('against');
    // What a slack terminal gives in two cases of three does not speak against it, even where all others always give it.
    expect(speaksOf(2 / 3, 1)).toBeUndefined();
    expect(speaksOf(0.35, 0.9)).toBeUndefined();
  });
  it('is never against a cause where it is how the bike is built', () => {
    const model = compile({
      steps: { drives: ['both', 'rear'] },
      rows: [row('one', { drives: [0.02, 0.98] }), row('other', { drives: [1, 0] })],
    });
    const speaks = (trust: 'build' | 'seen') =>
      evidence(model, knowing([seen('drives', 'both', { trust })]))('one')[0]?.speaks;
    expect(speaks('build')).toBeUndefined();
    expect(speaks('seen')).toBe('against');
  });
  it('is no misfit where it is told of the past, and then speaks for nothing either', () => {
    const model = compile({
      steps: { change: ['unit', 'none'] },
      rows: [row('one', { change: [0.03, 0.97] }), row('other', { change: [0.001, 0.999] })],
    });
    const told = seen('change', 'unit', { trust: 'told' });
    expect(evidence(model, knowing([told]))('one')[0]?.speaks).toBeUndefined();
  });
  it('is for a cause that gives it and others do not', () => {
    expect(speaksOf(0.9, 0.1)).toBe('for');
  });
  it('is not for a cause that hardly ever gives it, although all others give it more seldom still', () => {
    expect(speaksOf(0.03, 0.001)).toBe('misfit');
    expect(speaksOf(0.2, 0.001)).toBe('for');
  });
  it('never speaks for a cause by what that was said not to show, in any table', () => {
    fc.assert(
      fc.property(anyCase, ({ table, known }) => {
        const any = compile(table);
        const believed = posterior(any, known);
        const misfits = doubts(any, known, believed).filter(({ because }) => because === 'misfit');
        const [first] = ranked(any, believed);
        for (const { step, speaks } of evidence(any, known)(first?.cause ?? ''))
          if (misfits.some((one) => one.step === step)) expect(speaks).not.toBe('for');
      }),
    );
  });
  it('does not speak for one cause of two by what only the second gives', () => {
    const steps = ['a1', 'a2', 'a3', 'b1', 'b2', 'b3'];
    const single = compile(rightOrWrong(steps, { a: ['a1', 'a2', 'a3'], b: ['b1', 'b2', 'b3'] }));
    const known = knowing(steps.map((step) => seen(step, 'wrong')));
    const { model } = reckoned(single, known);
    expect(model).not.toBe(single);
    const [first] = ranked(model, posterior(model, known));
    const own = first?.cause === 'a' ? /^a/ : /^b/;
    for (const { step, speaks } of evidence(model, known, single)(first?.cause ?? ''))
      if (!own.test(step)) expect(speaks, step).not.toBe('for');
  });
});
