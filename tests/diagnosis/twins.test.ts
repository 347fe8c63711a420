import { describe, expect, it } from 'vitest';
import type { Signs } from '../../src/diagnosis/signs.ts';
import { areTwins, tellsApart, twinClasses } from '../../src/diagnosis/twins.ts';

/* Made up for the test. */
const fuse: Signs = { weight: 1, shows: { lamp: { off: 1 }, hum: { silent: 1 } } };
const lead: Signs = { weight: 2, shows: { lamp: { off: 1 }, hum: { silent: 1 } } };
const motor: Signs = { weight: 1, shows: { lamp: { on: 1 }, hum: { silent: 0.5, hums: 0.5 } } };
const old: Signs = { ...lead, odds: { age: { old: 3 } } };
const STEPS = ['lamp', 'hum', 'age'];

describe('twins', () => {
  it('are two suspects that show the same at every step', () => {
    expect(areTwins(fuse, lead, STEPS)).toBe(true);
    expect(areTwins(fuse, motor, STEPS)).toBe(false);
  });
  it('are told apart by history too, when it is asked', () => {
    expect(areTwins(fuse, old, STEPS)).toBe(false);
    expect(areTwins(fuse, old, ['lamp', 'hum'])).toBe(true);
  });
  it('depend on what can be done: without the lamp the motor is a twin only for half of all riders', () => {
    expect(tellsApart('hum', fuse, motor)).toBe(true);
    expect(areTwins(fuse, motor, [])).toBe(true);
  });
  it('are not told apart by a step that differs once in fifty', () => {
    expect(tellsApart('hum', fuse, { weight: 1, shows: { hum: { silent: 0.98, hums: 0.02 } } })).toBe(false);
  });
  it('fall into classes', () => {
    expect(twinClasses([fuse, motor, lead], STEPS)).toEqual([[fuse, lead], [motor]]);
  });
});
