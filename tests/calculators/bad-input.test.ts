import { describe, expect, it } from 'vitest';
import { CALCULATORS } from '../../src/calculators/all.ts';
import type { Calculator } from '../../src/calculators/calculator.ts';
import { shown } from '../../src/calculators/shown.ts';
import { worked } from '../../src/calculators/typed.ts';
import { symbolOf } from '../../src/compute/units.ts';
import type { NumberField } from '../../src/rig/fields.ts';
import { allowedRange } from '../../src/rig/typed-field.ts';

const fields = CALCULATORS.flatMap((one) =>
  Object.entries(one.inputs).flatMap(([id, field]) =>
    field.kind === 'number' ? [[one.id, id, one, field] as const] : [],
  ),
);
const choices = CALCULATORS.flatMap((one) =>
  Object.entries(one.inputs).flatMap(([id, field]) => (field.kind === 'choice' ? [[one.id, id, one] as const] : [])),
);

const typicalIn = ({ typical, siPerTyped }: NumberField) => Number((typical / siPerTyped).toPrecision(4));
/** A value that is accepted, in the ways in which people write one. */
const written = (field: NumberField): Readonly<Record<string, string>> => {
  const plain = String(typicalIn(field));
  const unit = symbolOf(field.unit);
  return {
    plain,
    'with blanks around it': `  ${plain} `,
    'with a locale’s comma': plain.replace('.', ','),
    'with its unit pasted': `${plain} ${unit}`,
    'with its unit and no blank': `${plain}${unit}`,
    'in full-width digits': plain.replace(/[\d.]/g, (digit) => String.fromCharCode(digit.charCodeAt(0) + 0xfee0)),
  };
};
const NEVER = [
  'abc',
  '<b>4</b>',
  '--5',
  '5..5',
  '1/2',
  'NaN',
  '½',
  '12 kg',
  '1.234,5',
  '2,000',
  '9e99',
  '1e12',
  '-1e6',
];

const message = (one: Calculator, id: string, text: string) => worked(one, { [id]: text }).errors[id];

describe('every field of every calculator', () => {
  it.each(fields)('%s: %s takes a usual value however it is written', (_, id, one, field) => {
    const results = Object.entries(written(field)).map(([way, text]) => {
      const { result, errors } = worked(one, { [id]: text });
      expect(errors[id], `${way}: ${text}`).toBeUndefined();
      return result?.says;
    });
    expect(new Set(results).size).toBe(1);
  });
  it.each(fields)('%s: %s takes the usual value where nothing stands in it', (_, id, one) => {
    for (const text of ['', ' ', '\t', '\u3000']) {
      const { result, assumed } = worked(one, { [id]: text });
      expect([result !== undefined, assumed.includes(id)]).toEqual([true, true]);
    }
  });
  it.each(fields)(
    '%s: %s says of what it cannot use what is wrong, and names something that it takes',
    (_, id, one, field) => {
      for (const text of NEVER) {
        const said = message(one, id, text) ?? '';
        expect(said, text).toMatch(/[.?]$/);
        const example = /for example ([^.]*(?:\.\d[^.]*)?)\.$/.exec(said)?.[1];
        const namesIt = /can mean|mark between thousands/.test(said) || said.includes(allowedRange(field));
        expect(namesIt || example !== undefined, `${text}: ${said}`).toBe(true);
        if (example !== undefined && !/thousands/.test(said)) expect(message(one, id, example), said).toBeUndefined();
      }
    },
  );
  it.each(fields)('%s: %s takes zero and negative numbers only where it says that it does', (_, id, one, field) => {
    for (const value of [0, -1]) {
      const allowed = field.allowed[0] <= value * field.siPerTyped && value * field.siPerTyped <= field.allowed[1];
      const said = message(one, id, String(value));
      if (allowed) expect(said).toBeUndefined();
      else expect(said).toContain(`${value === 0 ? '0' : '−1'} is outside ${allowedRange(field)}.`);
    }
  });
  it.each(choices)('%s: %s refuses what is none of its options', (_, id, one) => {
    for (const text of ['0', 'abc', '<b>4</b>', 'constructor', '__proto__'])
      expect(message(one, id, text), text).toMatch(/is not one of/);
  });
});

describe('the last good result of every calculator', () => {
  it.each(fields)('stays while %s: %s cannot be used, marked as such, with the field named', (_, id, one, field) => {
    const good = worked(one, { [id]: String(typicalIn(field)) });
    const before = shown(one, good);
    expect(before).toEqual({ result: good.result });
    for (const text of NEVER) {
      const after = shown(one, worked(one, { [id]: text }), before.result);
      expect(after.result).toBe(good.result);
      expect(after.notice).toBe(
        `“${field.label}” below cannot be used yet. This is the last result that could be worked out.`,
      );
    }
  });
  it('stays where two values do not go together, and says which', () => {
    const one = CALCULATORS.find(({ id }) => id === 'speaker-wiring');
    if (!one) throw new Error('no speaker wiring');
    const { result } = worked(one, {});
    const after = shown(one, worked(one, { count: '2', wiring: 'single' }), result);
    expect(after.result).toBe(result);
    expect(after.notice).toMatch(/in parallel or in series.* This is the last result/);
  });
});
