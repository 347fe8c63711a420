import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field, type NumberField } from '../../src/rig/fields.ts';
import { MOST_AMPS, validateRig } from '../../src/rig/validate.ts';
import { anyRig } from './any-rig.ts';

type Fields = Readonly<Record<string, Field>>;
const numbersOf = (fields: Fields) =>
  Object.entries(fields).filter((entry): entry is [string, NumberField] => entry[1].kind === 'number');
const choicesOf = (fields: Fields) =>
  Object.entries(fields).flatMap(([id, field]) => (field.kind === 'choice' ? [[id, field] as const] : []));

/** A bike with one value, on the bike itself or on its only amplifier, and that value read back. */
const PLACES = {
  'a bike': {
    fields: BIKE_FIELDS as Fields,
    check: (id: string, value: unknown) => {
      const { rig, refused } = validateRig({ [id]: value });
      return { kept: (rig as Readonly<Record<string, unknown>>)[id], refused };
    },
  },
  'an amplifier': {
    fields: AMP_FIELDS as Fields,
    check: (id: string, value: unknown) => {
      const { rig, refused } = validateRig({ amps: [{ [id]: value }] });
      return { kept: (rig.amps?.[0] as Readonly<Record<string, unknown>> | undefined)?.[id], refused };
    },
  },
};

describe.each(Object.entries(PLACES))('a number of %s', (_, { fields, check }) => {
  it.each(numbersOf(fields))('%s is kept at both ends of its range and inside it', (id, { allowed: [low, high] }) => {
    for (const value of [low, (low + high) / 2, high]) expect(check(id, value)).toEqual({ kept: value, refused: [] });
  });

  it.each(numbersOf(fields))('%s is refused just outside its range, by its name and range', (id, field) => {
    const [low, high] = field.allowed;
    for (const value of [low * (1 - 1e-9), high * (1 + 1e-9), -low, 0, Infinity, NaN]) {
      const { kept, refused } = check(id, value);
      expect(kept).toBeUndefined();
      expect(refused).toHaveLength(1);
      expect(refused[0]).toContain(`${field.label}: `);
      expect(refused[0]).toMatch(/ is outside [\d.]+ to [\d.]+ \S+\.$/);
    }
  });

  it.each(numbersOf(fields))('%s is refused as text, even if the text is a number', (id, field) => {
    const { kept, refused } = check(id, String(field.typical));
    expect(kept).toBeUndefined();
    expect(refused).toEqual([expect.stringContaining(`${field.label}: “${field.typical}” is outside`)]);
  });

  it.each(numbersOf(fields))('%s has a typical value and a usual range within what is allowed', (_id, field) => {
    const [low, high] = field.allowed;
    const [usualLow, usualHigh] = field.usual;
    expect([low, usualLow, field.typical, usualHigh, high].every(Number.isFinite)).toBe(true);
    expect(low).toBeGreaterThan(0);
    expect(low).toBeLessThanOrEqual(usualLow);
    expect(usualLow).toBeLessThanOrEqual(field.typical);
    expect(field.typical).toBeLessThanOrEqual(usualHigh);
    expect(usualHigh).toBeLessThanOrEqual(high);
  });
});

describe.each(Object.entries(PLACES))('a choice of %s', (_, { fields, check }) => {
  it.each(choicesOf(fields))('%s is kept for each of its options', (id, { options }) => {
    for (const option of Object.keys(options)) expect(check(id, option)).toEqual({ kept: option, refused: [] });
  });

  it.each(choicesOf(fields))('%s is refused as anything else, and its options are named', (id, { label, options }) => {
    const names = Object.values(options).join(', ');
    for (const value of ['nonsense', 'toString', '__proto__', '', 1, true, null]) {
      const { kept, refused } = check(id, value);
      expect(kept).toBeUndefined();
      expect(refused).toEqual([expect.stringContaining(`${label}: “${value}” is not one of ${names}.`)]);
    }
  });

  it.each(choicesOf(fields))('%s has a typical option that exists', (_id, { options, typical }) => {
    expect(Object.keys(options)).toContain(typical);
  });
});

describe('validateRig', () => {
  it('shows the range in the unit that the form shows, not in SI', () => {
    expect(validateRig({ rearRunM2: 40e-6 }).refused).toEqual([
      'Rear speaker run, wire section: 40 is outside 0.20 to 10.0 mm².',
    ]);
    expect(validateRig({ supplyRunningV: 24 }).refused).toEqual([
      'Supply, engine running: 24 is outside 12.0 to 15.5 V.',
    ]);
  });

  it.each(Object.entries(EXAMPLE_RIGS))('keeps the example %s whole', (_, rig) => {
    expect(validateRig(rig)).toEqual({ rig, refused: [] });
  });

  it('keeps every bike whose values lie in their ranges, and what it kept it keeps again', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        expect(validateRig(rig)).toEqual({ rig, refused: [] });
      }),
    );
  });

  it('leaves out a field it does not know, by name, and keeps the rest', () => {
    expect(validateRig({ hornDb: 110, deliveredWith: 'four' })).toEqual({
      rig: { deliveredWith: 'four' },
      refused: ['“hornDb” is not something this version knows about a bike.'],
    });
  });

  it('says which amplifier a value belongs to', () => {
    const { rig, refused } = validateRig({ amps: [{ turnOn: 'wire' }, { powerW: 0, input: 'line' }] });
    expect(rig.amps).toEqual([{ turnOn: 'wire' }, { input: 'line' }]);
    expect(refused).toEqual(['Amplifier 2, Sine power of one channel: 0 is outside 5 to 1000 W.']);
  });

  it(`keeps the first ${MOST_AMPS} amplifiers of a longer list and says so`, () => {
    const { rig, refused } = validateRig({ amps: Array.from({ length: 6 }, (_, i) => ({ powerW: 50 + i })) });
    expect(rig.amps?.map(({ powerW }) => powerW)).toEqual([50, 51, 52, 53]);
    expect(refused).toEqual(['Only the first 4 of 6 amplifiers are kept.']);
  });

  it('keeps the place of an amplifier that is not one, so that the others keep their numbers', () => {
    expect(validateRig({ amps: ['big', { turnOn: 'dc' }] })).toEqual({
      rig: { amps: [{}, { turnOn: 'dc' }] },
      refused: ['Amplifier 1 is not a description of an amplifier.'],
    });
  });

  it('refuses a list of amplifiers that is no list, and a name that is no text', () => {
    expect(validateRig({ amps: 2, name: 7 })).toEqual({
      rig: {},
      refused: ['The name of the bike is not text.', 'The list of amplifiers is not a list.'],
    });
  });

  it('cuts a name at 60 characters', () => {
    expect(validateRig({ name: 'x'.repeat(61) }).rig.name).toBe('x'.repeat(60));
  });

  it.each([null, undefined, 'bike', 7, [], [{}]])('refuses %j as no description of a bike', (claimed) => {
    expect(validateRig(claimed)).toEqual({ rig: {}, refused: ['This is not a description of a bike.'] });
  });

  it('never throws and never keeps a value outside its range, whatever claims to be a bike', () => {
    const fields = [...Object.keys(BIKE_FIELDS), ...Object.keys(AMP_FIELDS), 'amps', 'name', '__proto__', 'toString'];
    const hostile = fc.dictionary(
      fc.oneof(fc.constantFrom(...fields), fc.string()),
      fc.oneof(fc.jsonValue(), fc.array(fc.dictionary(fc.constantFrom(...fields), fc.jsonValue()))),
    );
    fc.assert(
      fc.property(hostile, (claimed) => {
        const { rig, refused } = validateRig(JSON.parse(JSON.stringify(claimed)));
        expect(validateRig(rig)).toEqual({ rig, refused: [] });
        for (const sentence of refused) expect(sentence).toMatch(/\.$/);
      }),
    );
  });

  it('says of a value without a text form that it cannot be used', () => {
    const { rig, refused } = validateRig({ unitKind: { toString: null, valueOf: null }, supplyOffV: { toString: 1 } });
    expect(rig).toEqual({});
    expect(refused).toHaveLength(2);
  });

  it('quotes no more of a long wrong text than fits a sentence', () => {
    const { refused } = validateRig({ unitKind: 'x'.repeat(10_000), ['y'.repeat(10_000)]: 1 });
    expect(refused).toHaveLength(2);
    for (const sentence of refused) expect(sentence.length).toBeLessThan(300);
  });
});
