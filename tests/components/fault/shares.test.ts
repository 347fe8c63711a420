import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareInWords } from '../../../src/components/fault/shares.ts';

describe('a share in words', () => {
  it.each([
    [1, 'more than 9 in 10'],
    [0.95, 'more than 9 in 10'],
    [0.94, 'about 9 in 10'],
    [0.5, 'about 5 in 10'],
    [0.15, 'about 2 in 10'],
    [0.1, 'about 1 in 10'],
    [0.065, 'about 1 in 15'],
    [0.03, 'about 1 in 30'],
    [0.011, 'about 1 in 100'],
    [0.007, 'less than 1 in 100'],
    [0, 'less than 1 in 100'],
  ])('of %f is “%s”', (shareRatio, says) => expect(shareInWords(shareRatio)).toBe(says));

  it('never says none, and never all', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (shareRatio) => {
        expect(shareInWords(shareRatio)).toMatch(/^(more than 9|about [1-9]) in 10$|^(about|less than) 1 in \d+$/);
      }),
    );
  });
  it('says no more of a smaller one', () => {
    const worth = (says: string) => {
      const [, many = 0, of = 1] = /(\d+) in (\d+)/.exec(says)?.map(Number) ?? [];
      return many / of + (says.startsWith('more') ? 0.01 : says.startsWith('less') ? -0.001 : 0);
    };
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        expect(worth(shareInWords(Math.min(a, b)))).toBeLessThanOrEqual(worth(shareInWords(Math.max(a, b))));
      }),
    );
  });
});
