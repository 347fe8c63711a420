import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../src/causes/all.ts';
import { splitOf } from '../../src/causes/cause.ts';
import { highpass, magnitudeDb } from '../../src/compute/filter.ts';
import { found, KNOWN, linesOf, TWO_AMPS, UNKNOWN } from './found.ts';

const BUTTERWORTH_DB = -10 * Math.log10(2);
/** What sets a gain by an 80 Hz tone, or reads an output with one to judge it. */
const AT_AN_OUTPUT = /80 Hz tone.*(usual top step|loudest step)|both tones at your usual top step/;

describe('a gain that is set by an 80 Hz tone', () => {
  // S. Butterworth, On the Theory of Filter Amplifiers (1930): half the power passes at the corner, whatever the order.
  it('would end 3 dB too high behind a high-pass at 80 Hz, and not one bit at 400 Hz', () => {
    const coefficients = highpass({ cornerHz: 80, qDb: BUTTERWORTH_DB });
    expect(magnitudeDb({ coefficients, frequencyHz: 80 })).toBeCloseTo(-3.01, 2);
    expect(magnitudeDb({ coefficients, frequencyHz: 400 })).toBeCloseTo(0, 1);
  });
  it.each(CAUSES.map((cause) => [cause.id, cause] as const))(
    '%s: has the high-pass off, and back on after',
    (_, cause) => {
      for (const f of [found(KNOWN), found(TWO_AMPS), found(UNKNOWN)]) {
        const { fix, repair, proofOfCure } = cause.remedy(f);
        const recipe = fix.join(' ');
        const sets = repair.some((one) => one.do === 'set-gain') || /Set the gain again when it is back/.test(recipe);
        if (sets) {
          expect(recipe).toMatch(/high-pass off.*80 Hz tone.*high-pass (back )?on/);
          if (
            AT_AN_OUTPUT.test(proofOfCure.byMeter ?? '') &&
            /output (above|at)|each output at/.test(proofOfCure.byMeter ?? '')
          )
            expect(proofOfCure.byMeter).toMatch(/high-pass off.*Then high-pass back on/);
        }
        const check = splitOf(cause, f).byMeter;
        if (/80 Hz tone.*square root/.test(check)) expect(check).toMatch(/high-pass off/);
      }
    },
  );
  it('gives no volts of an amplifier whose watts and ohms nobody knows', () => {
    for (const cause of CAUSES) {
      const said = linesOf(cause.remedy(found(UNKNOWN))).join(' ');
      expect(said, cause.id).not.toMatch(
        /W into|clips at [\d.]+ V|no output above [\d.]+ V|up to [\d.]+ V, and no further/,
      );
    }
  });
});
