import { afterEach, describe, expect, it, vi } from 'vitest';
import { BIKE_KEY } from '../../src/browser/case-keys.ts';
import { keepReadings } from '../../src/browser/keep-readings.ts';

afterEach(() => vi.unstubAllGlobals());

function deviceWith(held: Record<string, string>) {
  const at = new Map(Object.entries(held));
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => at.get(key) ?? null,
    setItem: (key: string, text: string) => at.set(key, text),
    removeItem: (key: string) => at.delete(key),
  });
  return () => JSON.parse(at.get(BIKE_KEY) ?? 'null') as unknown;
}
const READ = { on: '2026-05-03', answers: { 'meter-digit': { option: '0.01' } } };

describe('readings that are kept with the bike', () => {
  it('leave all else that is saved of it, also what this version does not know', () => {
    const saved = deviceWith({ [BIKE_KEY]: '{"hornDb":110,"frontRatedOhm":4}' });
    expect(keepReadings(READ)).toBeUndefined();
    expect(saved()).toEqual({ hornDb: 110, frontRatedOhm: 4, profileRead: READ });
  });
  it('make a bike of which nothing was known', () => {
    const saved = deviceWith({});
    expect(keepReadings(READ)).toBeUndefined();
    expect(saved()).toEqual({ profileRead: READ });
  });
});
