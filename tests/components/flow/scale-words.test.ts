import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleInWords } from '../../../src/components/flow/scale-words.ts';
import { parseQuantity, type Unit } from '../../../src/compute/quantity.ts';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import type { Band, ReadingStep, Step } from '../../../src/steps/step.ts';
import { BATTERY_BANDS } from '../../../src/steps/supply/battery.ts';
import { anyRig } from '../../rig/any-rig.ts';
import { on } from '../../steps/situation.ts';

const numbers = (text: string, unit: Unit): readonly number[] =>
  text
    .replace(/^under | or more$/g, '')
    .split(' to ')
    .map((part, i, all) => {
      // “0.70 to 1.4 V”: the first shares the unit of the second.
      const parsed = parseQuantity(i < all.length - 1 ? part + (all.at(-1) ?? '').replace(/^[-\d.]+/, '') : part, unit);
      return parsed.ok && !parsed.over ? parsed.value : expect.fail(`${part} is no number`);
    });

/** What somebody would take the bands to be who reads nothing but the words. */
function readBack(stretches: readonly string[], unit: Unit): readonly (readonly [low: number, high: number])[] {
  return stretches.map((text) => {
    const [a = 0, b = a] = numbers(text, unit);
    return text.startsWith('under') ? [-Infinity, a] : text.endsWith('or more') ? [a, Infinity] : [a, b];
  });
}

const bandsFrom = (limits: readonly number[]): readonly Band[] =>
  [0, ...limits].map((low, i) => ({ label: `band ${i}`, low, high: limits[i] ?? Infinity, mood: 'good' }));

const STEPS = (Object.values(ALL_STEPS) as readonly Step[]).filter(
  (step): step is ReadingStep => step.kind === 'reading',
);

describe('a scale in words', () => {
  it('tells an empty battery from a low one', () => {
    // Rounded to two digits all of it was "12 V".
    expect(scaleInWords(BATTERY_BANDS, 'V', 12.1).stretches).toEqual([
      'under 11.8 V',
      '11.8 to 12.2 V',
      '12.2 to 15.0 V',
      '15 V or more',
    ]);
  });
  it('goes finer where a reading would seem to lie in the next band', () => {
    const bands = bandsFrom([0.1149, 0.5]);
    expect(scaleInWords(bands, 'V', 0.05).stretches[0]).toBe('under 0.11 V');
    expect(scaleInWords(bands, 'V', 0.112).stretches[0]).toBe('under 0.115 V');
  });
  it('never has two neighbours with the same limits, nor a reading outside the band that it is said to be in', () => {
    const limits = fc
      .uniqueArray(fc.integer({ min: 1, max: 4000 }), { minLength: 1, maxLength: 5 })
      .map((all) => all.toSorted((a, b) => a - b).map((n) => n / 100));
    const read = fc.integer({ min: 0, max: 9999 }).map((n) => n / 100);
    fc.assert(
      fc.property(limits, read, fc.constantFrom<Unit>('V', 'Ω'), (ends, value, unit) => {
        const bands = bandsFrom(ends);
        const { stretches, written } = scaleInWords(bands, unit, value);
        const shown = readBack(stretches, unit);
        const here = bands.findIndex(({ low, high }) => value >= low && value < high);
        const [readAs = 0] = numbers(written, unit);
        expect(readAs).toBeGreaterThanOrEqual(shown[here]?.[0] ?? 0);
        expect(readAs).toBeLessThan(shown[here]?.[1] ?? 0);
        for (const [low, high] of shown) expect(low).toBeLessThan(high);
      }),
    );
  });
  it('holds on every scale of every step, whatever the bike', () => {
    const values = { batteryV: 12.4, frontV: 1, sentV: 1, v400V: 0.5, leadsOhm: 0.2, leftOhm: 3.7, rightOhm: 3.8 };
    fc.assert(
      fc.property(anyRig, (rig) => {
        for (const step of STEPS)
          for (const [name, { unit }] of Object.entries(step.readings)) {
            // Four digits tell apart what lies a thousandth apart; no meter on a bike shows less.
            const bands = step.bands(name, values, on(rig)) ?? [];
            if (bands.some(({ low, high }) => high - low < 0.001 * Math.abs(high))) continue;
            for (const [low, high] of readBack(scaleInWords(bands, unit, undefined).stretches, unit))
              expect(low, `${step.id} ${name}`).toBeLessThan(high);
          }
      }),
      { numRuns: 30 },
    );
  });
});
