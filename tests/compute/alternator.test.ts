import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { phaseHz, rippleEngineRpm, rippleHz, sparkHz } from '../../src/compute/alternator.ts';
import { expectClose } from './close.ts';
import { evenly } from './evenly.ts';

describe('phaseHz', () => {
  // rpm = 120 f / poles, Lessons In Electric Circuits, AC vol., "Introduction to AC motors".
  it.each([
    [1, 3600, 60],
    [6, 600, 60],
    [2, 1800, 60],
    [5, 600, 50],
  ])('gives for %i pole pairs at %i rpm %i Hz', (polePairs, engineRpm, hertz) => {
    expectClose(phaseHz({ polePairs, engineRpm }), hertz);
  });
  it('refuses half a pole pair', () => {
    expect(() => phaseHz({ polePairs: 1.5, engineRpm: 1000 })).toThrow(/^polePairs must be a whole number, got 1.5$/);
  });
});

describe('rippleHz', () => {
  // Six pulses a cycle: Lessons In Electric Circuits, Semiconductors vol., "Rectifier circuits".
  it.each([
    [1000, 900],
    [3000, 2700],
    [5000, 4500],
  ])('is for nine pole pairs at %i rpm %i Hz', (engineRpm, hertz) => {
    expectClose(rippleHz({ polePairs: 9, engineRpm }), hertz);
  });
  it('follows the engine speed, and the speed can be read off it', () => {
    fc.assert(
      fc.property(evenly(600, 9000), fc.integer({ min: 1, max: 24 }), evenly(0.5, 3), (engineRpm, polePairs, ratio) => {
        const turning = { polePairs, driveRatio: ratio };
        expectClose(rippleEngineRpm({ rippleHz: rippleHz({ engineRpm, ...turning }), ...turning }), engineRpm);
      }),
    );
  });
});

describe('sparkHz', () => {
  // A four-stroke cylinder works once in two turns.
  it('is 50 a second for two cylinders at 3000 rpm, and 100 with a spark at every turn', () => {
    expectClose(sparkHz({ engineRpm: 3000, cylinders: 2 }), 50);
    expectClose(sparkHz({ engineRpm: 3000, cylinders: 2, everyTurn: true }), 100);
  });
});
