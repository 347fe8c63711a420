import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CALCULATORS } from '../../src/calculators/all.ts';
import { type Calculator, CannotWork, type Result } from '../../src/calculators/calculator.ts';
import { type Picture, ticksOf } from '../../src/calculators/picture.ts';
import { linkOf, typedFromBike, typedInLink, worked } from '../../src/calculators/typed.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Field } from '../../src/rig/fields.ts';
import { allowedRange, type Typed } from '../../src/rig/typed-field.ts';

const each = CALCULATORS.map((one) => [one.id, one] as const);
const named = (id: string): Calculator => {
  const one = CALCULATORS.find((each) => each.id === id);
  if (!one) throw new Error(`no calculator ${id}`);
  return one;
};
const result = (id: string, typed: Typed): Result => {
  const { result: found, errors, together } = worked(named(id), typed);
  if (!found) throw new Error(together ?? JSON.stringify(errors));
  return found;
};
/** The figure of a line whose label begins so. */
const line = ({ lines }: Result, label: string): string =>
  (lines.find((each) => each.label.startsWith(label))?.text ?? '').replaceAll('\u00a0', ' ');

const textsOf = ({ lines, says }: Result) => [says, ...lines.flatMap(({ text, note }) => [text, note ?? ''])];
const numbersOf = (picture: Picture): readonly number[] =>
  picture.kind === 'joined'
    ? [picture.count, picture.each.value]
    : [picture.x, picture.y]
        .flatMap(({ low, high }) => [low, high])
        .concat(picture.curves.flatMap(({ points }) => points.flat()))
        .concat((picture.marks ?? []).flatMap(({ x, y }) => [x, y]));

/** Any value that a field accepts, or its usual one. */
const anyValue = (field: Field): fc.Arbitrary<number | string> => {
  if (field.kind === 'choice') return fc.constantFrom(...Object.keys(field.options));
  const [low, high] = field.allowed;
  const between = field.whole
    ? fc.integer({ min: Math.ceil(low), max: Math.floor(high) })
    : fc.integer({ min: 0, max: 1000 }).map((step) => low + ((high - low) * step) / 1000);
  return fc.oneof(fc.constant(field.typical), between);
};

describe('every calculator', () => {
  it('is in the list', () => {
    const files = readdirSync('src/calculators').filter((file) => file.endsWith('.ts'));
    const not = ['all.ts', 'calculator.ts', 'in-words.ts', 'picture.ts', 'shown.ts', 'typed.ts', 'units.ts'];
    expect(CALCULATORS.length).toBe(files.filter((file) => !not.includes(file)).length);
    expect(new Set(CALCULATORS.map(({ id }) => id)).size).toBe(CALCULATORS.length);
  });
  it.each(each)('%s gives a result with nothing filled in, the answer first', (_, one) => {
    const { result: found } = worked(one, {});
    expect(found?.lines[0]?.text).toMatch(/\d/);
    expect(one.asks.endsWith('?')).toBe(true);
  });
  it.each(each)('%s has usual values within what it allows', (_, one) => {
    for (const field of Object.values(one.inputs)) {
      if (field.kind !== 'number') continue;
      const [low, high] = field.allowed;
      expect([low <= field.usual[0], field.usual[1] <= high], field.label).toEqual([true, true]);
      expect(low <= field.typical && field.typical <= high, field.label).toBe(true);
    }
  });
  it.each(each)('%s gives figures for whatever its fields accept, or says what does not go together', (_, one) => {
    const values = fc.record(Object.fromEntries(Object.entries(one.inputs).map(([id, f]) => [id, anyValue(f)])));
    fc.assert(
      fc.property(values, (drawn) => {
        let found: Result;
        try {
          found = one.result(drawn);
        } catch (error) {
          expect(error).toBeInstanceOf(CannotWork);
          return;
        }
        for (const text of textsOf(found)) expect(text).not.toMatch(/NaN|Infinity|undefined|-0\b/);
        for (const value of numbersOf(found.picture)) expect(Number.isFinite(value)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
  it.each(each)('%s takes every example bike as it is', (_, one) => {
    for (const rig of Object.values(EXAMPLE_RIGS)) {
      const { result: found, errors } = worked(one, typedFromBike(one, rig));
      expect(errors).toEqual({});
      expect(found).toBeDefined();
    }
  });
  it.each(each)('%s comes back from its own link', (_, one) => {
    const typed = Object.fromEntries(
      Object.entries(one.inputs).map(([id, f]) => [id, f.kind === 'choice' ? f.typical : ' 1,5 ']),
    );
    const read = typedInLink(one, linkOf(one, typed));
    expect(Object.keys(read).sort()).toEqual(Object.keys(one.inputs).sort());
    expect(linkOf(one, read)).toBe(linkOf(one, typed));
  });
  it('takes nothing from a link that it has no field for, and a hostile one does no harm', () => {
    expect(typedInLink(named('whine'), '#__proto__=1&constructor=2&engineRpm=3000&x=1')).toEqual({ engineRpm: '3000' });
    expect(Object.keys(typedInLink(named('whine'), `#${'a=1&'.repeat(100_000)}`)).length).toBe(0);
  });
});

describe('bad input', () => {
  it.each(['0', '-5', '1e9', 'abc', '12 V', '1,2,3'])(
    'in a field says what is wrong with "%s" and what is allowed',
    (text) => {
      const { errors, result: found } = worked(named('whine'), { engineRpm: text });
      expect(found).toBeUndefined();
      expect(errors['engineRpm']).toMatch(/\d/);
    },
  );
  it('leaves the usual value where a field is empty or blank', () => {
    expect(worked(named('whine'), { engineRpm: '  ' }).assumed).toContain('engineRpm');
  });
  it('says which two do not go together', () => {
    expect(worked(named('speaker-wiring'), { count: '2', wiring: 'single' }).together).toMatch(
      /in parallel or in series/,
    );
    expect(worked(named('level-at-the-ear'), { speedMS: '50' }).together).toMatch(/Below 64 km\/h/);
  });
  it('names the range of a field in the unit that is typed', () => {
    const field = named('level-at-the-ear').inputs['speedMS'];
    expect(field?.kind === 'number' && allowedRange(field).replace('\u00a0', ' ')).toBe('40 to 200 km/h');
  });
});

describe('set-the-gain', () => {
  // P = E² / R (Lessons In Electric Circuits, DC vol., “Calculating electric power”): √(75 W × 4 Ω) = 17.3 V. A sine has
  // 1/√2 of its peak, and 7 dB is a ratio of 2.239 (same, AC vol., “Measurements of AC magnitude”, “Decibels”):
  // (12.6 − 0.8) V / √2 / 2.239 = 3.73 V; the 0.8 V is common practice, no published source.
  it('puts 90 W into 4 Ω at 17.3 V with the margin, and at 19.0 V without', () => {
    expect(line(result('set-the-gain', {}), 'Turn the gain up')).toBe('17 V');
    expect(line(result('set-the-gain', { margin: 'full' }), 'Turn the gain up')).toBe('19 V');
    expect(line(result('set-the-gain', {}), 'The head unit gives')).toBe('3.7 V');
  });
});

describe('what-a-profile-does', () => {
  // 10^(13 / 10) = 19.95; 12.0 V / √2 = 8.49 V, of which 10^(13/20) leaves 1.90 V. Lessons In Electric Circuits, “Decibels”.
  it('finds 20 times the watts in a boost of 13 dB, and 1.9 V before it clips', () => {
    const found = result('what-a-profile-does', { supplyV: '14.2', boostDb: '13' });
    expect(line(found, 'The boost takes')).toBe('20 times the watts');
    expect(line(found, 'Unaltered')).toBe('1.9 V');
  });
});

describe('speaker-wiring', () => {
  // Lessons In Electric Circuits, DC vol.: two of 4 Ω side by side make 2 Ω, in a row 8 Ω.
  it('makes 2 Ω of two 4 Ω speakers in parallel and 8 Ω in series', () => {
    expect(line(result('speaker-wiring', { count: '2', wiring: 'parallel' }), 'Load')).toBe('2 Ω');
    expect(line(result('speaker-wiring', { count: '2', wiring: 'series' }), 'Load')).toBe('8 Ω');
  });
  it('warns of a load below the least of the channel', () => {
    const found = result('speaker-wiring', { count: '2', wiring: 'parallel', leastOhm: '4' });
    expect(found.lines[0]?.mood).toBe('bad');
  });
  it('halves the load for each of two bridged channels', () => {
    expect(line(result('speaker-wiring', { bridged: 'yes' }), 'Each of the two')).toBe('1 Ω');
  });
});

describe('lead-and-fuse', () => {
  // Conservation of energy: 2 × 90 W / (0.75 × 13.5 V) = 17.8 A. Three quarters is the usual efficiency of a class D
  // amplifier at full power: common practice, no published source.
  it('finds 18 A at full bass for two channels of 90 W', () => {
    expect(line(result('lead-and-fuse', {}), 'It draws')).toBe('18 A');
  });
  // 33 CFR 183.425 allows 10 AWG at 60 °C 40 A; common practice, no published source, fuses it with 30 A.
  it('finds a 40 A fuse too large for 10 AWG', () => {
    const found = result('lead-and-fuse', { fittedM2: '10 AWG', fittedFuseA: '40' });
    expect(found.lines.find(({ label }) => label.startsWith('The fuse'))?.mood).toBe('bad');
  });
  it('never names a lead thinner than the one that is there', () => {
    expect(line(result('lead-and-fuse', { fittedM2: '4 AWG' }), 'The lead for it')).toMatch(/^21\.2 mm² \(4 AWG\)/);
  });
});

describe('charging-over-a-ride', () => {
  // Charge is current times time (Lessons In Electric Circuits, DC vol., “Battery ratings”): 20 min at −2 A take 0.67 Ah, 60 min at +27 A add 27 Ah, of which 85 % stay: +22.3 Ah.
  it('adds up idling and riding', () => {
    expect(line(result('charging-over-a-ride', {}), 'This ride')).toBe('+22 Ah');
  });
  it('says so where the battery pays', () => {
    const found = result('charging-over-a-ride', { musicA: '11', roadS: '0' });
    expect(found.lines[0]).toMatchObject({ mood: 'bad', text: expect.stringMatching(/^−2.7/) });
  });
});

describe('parked-draw', () => {
  // An ampere-hour is a current times its hours (Lessons In Electric Circuits, DC vol., “Battery ratings”):
  // 14 Ah / 15 mA = 933 h = 38.9 days.
  it('lets 15 mA stand for 39 days on half of 28 Ah', () => {
    expect(line(result('parked-draw', { drawA: '15', batteryAh: '28' }), 'It still starts')).toBe('39 days');
  });
});

describe('high-pass', () => {
  // p = ρ f U / r for a small source in a baffle (Kinsler et al., Fundamentals of Acoustics, from memory), worked by hand:
  // 104.2 cm³ make 100 dB at 60 Hz at 1 m. A cone of 130 mm has 132.7 cm²,
  // so that is 7.85 mm; 10 W into 90 dB make 100 dB.
  it('puts the corner at 60 Hz where the cone just manages the level', () => {
    const typed = { coneM: '130', excursionM: '7.85', sensitivityDb: '90', powerW: '10' };
    expect(line(result('high-pass', typed), 'High-pass')).toBe('60 Hz');
  });
});

describe('level-at-the-ear', () => {
  // 90 dBA of wind at 40 mph (Binnington et al. 1993) and as much music make 93 dBA: 75 min (NIOSH 98-126: 8 h / 2^(8/3)).
  it('allows 1 h 15 min at 40 mph with the music as loud as the wind', () => {
    expect(line(result('level-at-the-ear', { speedMS: '40 mph', overDb: '0' }), 'Safe for')).toBe('1 h 15 min');
  });
});

describe('whine', () => {
  // Nine pole pairs at 3000 rpm: 450 Hz a phase, six pulses a cycle: 2700 Hz. Lessons In Electric Circuits.
  it('is at 2700 Hz for nine pole pairs at 3000 rpm', () => {
    const found = result('whine', { polePairs: '9', engineRpm: '3000' });
    expect(line(found, 'Whine')).toBe('2700 Hz');
    expect(line(found, 'With a phase')).toBe('450 Hz and 900 Hz');
  });
  it('refuses half a pole pair', () => {
    expect(worked(named('whine'), { polePairs: '8.5' }).errors['polePairs']).toBe('Type a whole number, 1 to 24.');
  });
});

describe('volts-watts-decibels', () => {
  // 14.4 V / √2 = 10.18 V into 4 Ω: 25.92 W, the ideal bridge output of any amplifier text. 4 V against 2 V: 6.02 dB.
  it('turns 10.18 V across 4 Ω into 26 W, and 4 V against 2 V into 6 dB', () => {
    expect(line(result('volts-watts-decibels', { levelV: '10.18', loadOhm: '4' }), 'Watts')).toBe('26 W');
    expect(line(result('volts-watts-decibels', { levelV: '4', otherV: '2' }), 'Against')).toBe('+6 dB');
    expect(line(result('volts-watts-decibels', { levelV: '2' }), 'Level')).toBe('6.02 dBV');
  });
});

describe('the ticks of an axis', () => {
  it('are round, inside it, and neither few nor many', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 100_000 }), (low, width) => {
        const ticks = ticksOf({ label: '', low, high: low + width });
        expect(ticks.length).toBeGreaterThanOrEqual(3);
        expect(ticks.length).toBeLessThanOrEqual(9);
        for (const tick of ticks) expect(tick >= low - 1e-6 && tick <= low + width + 1e-6).toBe(true);
      }),
    );
  });
  it('are 1, 2 and 5 of each decade where there are few, and the decades where there are many', () => {
    expect(ticksOf({ label: '', low: 30, high: 500, log: true })).toEqual([50, 100, 200, 500]);
    expect(ticksOf({ label: '', low: 0.5, high: 10_000, log: true })).toEqual([1, 10, 100, 1000, 10_000]);
  });
});
