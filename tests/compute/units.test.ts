import { readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exportedNumbers } from './exported-numbers.ts';

/*
 * The compiler does not check units, so this does: every number that a module of src/compute or src/sound takes, gives
 * back or exports carries its unit as the end of its name.
 */
const FIELD = /[a-z0-9](?:V|A|Ah|W|Ohm|Hz|Rpm|Db|Dba|Dbfs|Dbu|Dbv|Pa|M|M2|MS|C|S|Hours|Ratio)$/;
const CONSTANT = /_(?:V|A|AH|W|OHM|OHM_M|HZ|DB|DBA|DBFS|PA|M|M2|M_S|KG_M3|C|S|RATIO|PER_K)$/;

/** Numbers that have no unit to carry, or whose unit stands beside them. Each needs a reason to be here. */
const WITHOUT_UNIT = new Map([
  ['q', 'the sharpness of a filter is a pure number with a name of its own'],
  ['boostQ', 'the same'],
  ...['b0', 'b1', 'b2', 'a1', 'a2'].map((name) => [name, 'a coefficient, named as W3C does'] as const),
  ['gauge', 'a place in a series'],
  ['count', 'a count'],
  ['channels', 'a count'],
  ['polePairs', 'a count'],
  ['cylinders', 'a count'],
  ['PULSES_PER_CYCLE', 'a count'],
  ['pulses', 'a count'],
  ['steps', 'a count'],
  ['dataBytes', 'bytes, which are its unit'],
  ['HEADER_BYTES', 'bytes, which are its unit'],
  ['durationOf', 'seconds, as every duration here: it gives those of a tone'],
  ['AC_DIGITS', 'a count'],
  ['significantDigits', 'a count'],
  ['lowest', 'a limit of the argument checked, which carries the unit'],
  ['highest', 'the same'],
  ['powerOfTen', 'an exponent'],
  ...['', 'µ', 'm', 'c', 'k', 'M'].map((name) => [name, 'a prefix: its number is an exponent'] as const),
  ...['value', 'low', 'high', 'limit', 'largest', 'written'].map(
    (name) => [name, 'text edge: the unit stands beside it'] as const,
  ),
]);

const COMPUTE = sources('src/compute');
const SOUND = sources('src/sound');

function sources(folder: string): string[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.ts'))
    .map((file) => resolve(folder, file));
}

function withoutUnit(names: readonly string[]): string[] {
  return names.filter((name) => !FIELD.test(name) && !CONSTANT.test(name) && !WITHOUT_UNIT.has(name));
}

describe('the names of numbers', () => {
  const ours = exportedNumbers([...COMPUTE, ...SOUND]);

  it('end with their unit in every function, type and constant of src/compute and src/sound', () => {
    expect(withoutUnit(ours)).toEqual([]);
  });
  it('are really looked at: fields, results, constants, arrays, maps and nested types', () => {
    expect(ours).toEqual(
      expect.arrayContaining([
        'loadOhm',
        'levelV',
        'lowRatio',
        'loadsOhm',
        'COPPER_RESISTIVITY_OHM_M',
        'FUSE_RATINGS_A',
        'LARGEST_FUSE_BY_GAUGE_A',
        'centreHz',
        'fadeS',
      ]),
    );
  });
  it('are exempt only where a number of that name still exists', () => {
    expect([...WITHOUT_UNIT.keys()].filter((name) => !ours.includes(name))).toEqual([]);
  });

  it.each([
    [
      'a parameter',
      'export function dropV({ current }: { current: number }): string { return String(current); }',
      'current',
    ],
    ['a plain parameter', 'export function dropV(current: number): string { return String(current); }', 'current'],
    [
      'an optional parameter',
      'export function dropV({ temp = 20 }: { temp?: number }): string { return String(temp); }',
      'temp',
    ],
    ['the result', 'export function drop(): number { return 1; }', 'drop'],
    ['a field of the result', 'export function bandV() { return { low1: 1 }; }', 'low1'],
    [
      'a field behind null',
      'type Deep = { a: { depth: number } | null }; export const f = (d: Deep) => String(d);',
      'depth',
    ],
    ['a field of a joined type', 'type A = { x: number }; export type B = A & { yV: number };', 'x'],
    ['an array', 'export const RATINGS: readonly number[] = [1, 2];', 'RATINGS'],
    ['a constant', 'export const LOSS = 2.2;', 'LOSS'],
    ['a capital that is no unit', 'export const f = (voltX: number) => String(voltX);', 'voltX'],
    ['a unit inside the name', 'export const f = (lengthMTotal: number) => String(lengthMTotal);', 'lengthMTotal'],
  ])('are caught without unit in %s', (_, snippet, name) => {
    expect(withoutUnit(exportedNumbers([], snippet))).toEqual([name]);
  });
  it('pass with it', () => {
    const good =
      'export function dropV({ currentA, awgSectionM2 }: { currentA: number; awgSectionM2: number }) { return currentA * awgSectionM2; }';
    expect(withoutUnit(exportedNumbers([], good))).toEqual([]);
  });
});
