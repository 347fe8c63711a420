import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validateRig } from '../../src/rig/validate.ts';
import { deliveredWith } from '../../src/steps/fitted/delivered-with.ts';
import { rearAmpInput } from '../../src/steps/fitted/rear-amp-input.ts';
import { rearAmpTurnOn } from '../../src/steps/fitted/rear-amp-turn-on.ts';
import { rearDrive } from '../../src/steps/fitted/rear-drive.ts';
import { rearRating } from '../../src/steps/fitted/rear-rating.ts';
import { unitKind } from '../../src/steps/fitted/unit-kind.ts';
import type { RigStep } from '../../src/steps/step.ts';
import { smallestDigitV } from '../../src/steps/tools/smallest-digit.ts';
import { anyRig } from '../rig/any-rig.ts';

const RIG_STEPS = [unitKind, rearDrive, rearAmpTurnOn, rearAmpInput, deliveredWith, rearRating].map(
  (step) => [step.id, step as unknown as RigStep] as const,
);

describe.each(RIG_STEPS)('the question %s', (_, step) => {
  const options = fc.constantFrom(...Object.keys(step.options));

  it('is open on a bike of which nothing is known', () => expect(step.known({})).toBeUndefined());

  it('is answered by what it learnt, which is a bike that can be saved', () => {
    fc.assert(
      fc.property(options, (option) => {
        const rig = step.learn(option, {});
        expect(step.known(rig)).toBe(option);
        expect(validateRig(rig).refused).toEqual([]);
      }),
    );
  });

  it('learns the same twice without a change, whatever else is known', () => {
    fc.assert(
      fc.property(anyRig, options, (rig, option) => {
        const once = step.learn(option, rig);
        expect(step.learn(option, once)).toEqual(once);
      }),
    );
  });

  it('is completed once, and its answer stays what it was', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const whole = step.complete?.(rig) ?? rig;
        expect(step.known(whole)).toBe(step.known(rig));
        expect(step.complete?.(whole) ?? whole).toEqual(whole);
      }),
    );
  });
});

describe('what drives the rear', () => {
  it('is known from the list of amplifiers before anything else', () => {
    expect(rearDrive.known({ amps: [{ drives: 'rear' }], rearFedBy: 'unit' })).toBe('amp');
    expect(rearDrive.known({ amps: [{ drives: 'both' }] })).toBe('amp');
    expect(rearDrive.known({ amps: [] })).toBe('unit');
    expect(rearDrive.known({ amps: [{ drives: 'front' }] })).toBeUndefined();
    expect(rearDrive.known({ amps: [{ drives: 'front' }], rearFedBy: 'unit' })).toBe('unit');
    expect(rearDrive.known({ rearFedBy: 'amp' })).toBe('amp');
  });
});

describe('the rating of a rear speaker', () => {
  it.each([
    [1, '2'],
    [2.99, '2'],
    [3, '4'],
    [5.99, '4'],
    [6, '8'],
    [16, '8'],
  ])('%f Ω stands for the answer %s', (rearRatedOhm, option) => {
    expect(rearRating.known({ rearRatedOhm })).toBe(option);
  });
});

describe('smallestDigitV', () => {
  it.each(['0.001', '0.01', '0.1'])('is the %s V that the rider read', (option) => {
    expect(smallestDigitV({ 'meter-digit': { option } })).toBe(Number(option));
  });
  // From memory of the trade, no published source: a basic meter starts at 200 V AC.
  it('is 0.1 V while nobody has said, could say, or said something else', () => {
    expect(smallestDigitV({})).toBe(0.1);
    expect(smallestDigitV({ 'meter-digit': { cannot: true } })).toBe(0.1);
    expect(smallestDigitV({ 'meter-digit': { option: '0.0001' } })).toBe(0.1);
    expect(smallestDigitV({ 'meter-digit': { readings: { digit: '0.001' } } })).toBe(0.1);
  });
});
