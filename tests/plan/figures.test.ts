import { describe, expect, it } from 'vitest';
import { planCase } from '../../src/plan/facts.ts';
import { figuresOf } from '../../src/plan/figures.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { known } from './known.ts';

const figures = (rig: Rig, front: 'unit' | 'amp') => figuresOf(planCase(known({ 'front-build': front }, rig)));

describe('figuresOf', () => {
  it('gives 18 W, and 3.59 W seven decibels lower, into 4 Ω at 14.2 V (worked by hand)', () => {
    expect(figures(EXAMPLE_RIGS['fork-fairing'], 'unit')).toMatchObject({
      fullV: '8.49 V', // (14.2 − 2.2) / √2
      fullW: '18 W', // 8.49² / 4
      loweredV: '3.79 V', // 8.49 / 10^(7/20)
      loweredW: '3.59 W',
      shareLeft: '20 %', // 10^(−7/10)
      bassTimes: '20 times', // 10^(13/10)
      bassClipsAtV: '1.9 V', // 8.49 / 10^(13/20)
      bassMovesDb: '20 dB',
    });
  });
  it('gives an amplifier more at the full level, and the same at the lowered one, which the supply does not limit', () => {
    expect(figures(EXAMPLE_RIGS['frame-fairing'], 'amp')).toMatchObject({ fullV: '9.48 V', loweredV: '3.79 V' });
  });
  it('gives ranges for what nobody knows of the bike', () => {
    expect(figures({}, 'unit')).toMatchObject({
      fullV: '8.0 to 8.8 V',
      loweredDb: '6 to 8 dB',
      bassTimes: '16 to 25 times',
      // (13.5 − 2.2)² / 2 / 4 and (14.6 − 2.2)² / 2 / 4: no finer than the supply is known.
      fullW: expect.stringMatching(/^1\d to \d\d W$/),
    });
  });
});
