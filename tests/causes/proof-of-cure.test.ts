import { describe, expect, it } from 'vitest';
import { proofFor } from '../../src/causes/proof-of-cure.ts';

const BOTH = { byEar: 'Both rears play.', byMeter: 'Both rears read 0.7 to 1.4 times the front.' };

describe('proofFor', () => {
  it('shows a proof of one sentence to everybody', () => {
    expect(proofFor('Ride, and listen.', false)).toEqual({ first: 'Ride, and listen.' });
    expect(proofFor('Ride, and listen.', true)).toEqual({ first: 'Ride, and listen.' });
  });
  it('puts the ears first where no meter is at hand, and the meter behind them', () => {
    expect(proofFor(BOTH, false)).toEqual({ first: BOTH.byEar, other: { title: 'With a meter', text: BOTH.byMeter } });
  });
  it('puts the meter first where there is one', () => {
    expect(proofFor(BOTH, true)).toEqual({
      first: BOTH.byMeter,
      other: { title: 'Without a meter', text: BOTH.byEar },
    });
  });
  it('asks nobody for a meter where ears are enough', () => {
    expect(proofFor({ byEar: BOTH.byEar }, true)).toEqual({ first: BOTH.byEar });
  });
});
