import { describe, expect, it } from 'vitest';
import { bandOf } from '../../src/steps/step.ts';
import { unitSends } from '../../src/steps/unit/unit-sends.ts';
import { type Digit, on } from './situation.ts';

/* Three last digits are noise, and so is what is there with the tone off: common practice, no published source. */
describe('what leaves the head unit', () => {
  const judged = (frontV: number, digit: Digit, residueV?: number) =>
    unitSends.judge({ frontV, ...(residueV !== undefined && { residueV }) }, on({}, digit));
  it.each([
    ['0.001', 0.003],
    ['0.01', 0.03],
    ['0.1', 0.3],
  ] as const)('is a signal above three last digits of a meter that shows %s V', (digit, limitV) => {
    expect(judged(0.99 * limitV, digit)).toBe('nothing');
    expect(judged(1.01 * limitV, digit)).toBe('sends');
  });
  it('is none where half as much again as with the tone off is all there is', () => {
    expect(judged(0.29, '0.001', 0.2)).toBe('nothing');
    expect(judged(0.31, '0.001', 0.2)).toBe('sends');
  });
  it('falls in the band that it is judged by', () => {
    for (const frontV of [0, 0.02, 0.03, 0.2, 5]) {
      const label = bandOf(unitSends.bands('frontV', { frontV }, on({}, '0.01')) ?? [], frontV)?.label;
      expect(label).toBe(judged(frontV, '0.01') === 'sends' ? 'a signal' : 'nothing');
    }
  });
});
