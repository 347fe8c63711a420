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
  it('puts the meter first where there is one, and ends in what is heard or seen', () => {
    expect(proofFor(BOTH, true)).toEqual({ first: BOTH.byMeter, sensed: 'Then look and listen: both rears play.' });
  });
  it('asks nobody for a meter where ears are enough', () => {
    expect(proofFor({ byEar: BOTH.byEar }, true)).toEqual({ first: BOTH.byEar });
  });
});
