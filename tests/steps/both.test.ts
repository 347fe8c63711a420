import { describe, expect, it } from 'vitest';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { firstOf, fixedOne } from '../../src/steps/both.ts';
import { whereHarsh } from '../../src/steps/ears/where-harsh.ts';

/* What comes of two faults at once: by reason alone. */

const outcomesOf = (id: string) => Object.keys(ALL_STEPS[id as keyof typeof ALL_STEPS]?.outcomes ?? {});
const combining = Object.values(ALL_STEPS).flatMap((step) => (step?.both ? [step] : []));

describe('what a step shows with two faults', () => {
  it('is said of those that try something or meet the worse of two', () => {
    expect(combining.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['clean-source', 'unit-flat', 'volume-onset']),
    );
  });
  it.each(combining.map((step) => [step.id, step] as const))(
    'is one of its outcomes, whichever fault is named first: %s',
    (id, step) => {
      const outcomes = outcomesOf(id);
      for (const one of outcomes)
        for (const other of outcomes) {
          const shown = step.both?.(one, other);
          expect(outcomes).toContain(shown);
          expect(step.both?.(other, one)).toBe(shown);
          if (one === other) expect(shown).toBe(one);
        }
    },
  );
  it('is no cure where only one of them is cured', () => {
    for (const step of combining) {
      const cures = outcomesOf(step.id).filter((outcome) => outcome === 'cured');
      for (const cure of cures)
        for (const other of outcomesOf(step.id).filter((outcome) => outcome !== cure))
          expect(step.both?.(cure, other), step.id).not.toBe(cure);
    }
  });
  it('is the worse of the two', () => {
    const worse = firstOf('all', 'bass');
    expect(worse('bass', 'all')).toBe('all');
    expect(worse('bass', 'bass')).toBe('bass');
  });
  it('is a setting found well up, where setting it right cured only one of them', () => {
    expect(fixedOne('cured', 'no-change')).toBe('was-up');
    expect(fixedOne('cured', 'cured')).toBe('cured');
  });
  it.each([
    ['front-left', 'front-right', 'front'],
    ['front-left', 'front', 'front'],
    ['rear-left', 'rear-left', 'rear-left'],
    ['front', 'rear', 'all'],
    ['front-left', 'rear-left', 'all'],
    ['all', 'rear', 'all'],
  ] as const)('is everywhere that either distorts: %s and %s are %s', (one, other, where) => {
    expect(whereHarsh.both?.(one, other)).toBe(where);
  });
});
