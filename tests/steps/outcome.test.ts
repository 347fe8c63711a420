import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { rearDrive } from '../../src/steps/fitted/rear-drive.ts';
import { rearRating } from '../../src/steps/fitted/rear-rating.ts';
import { unitKind } from '../../src/steps/fitted/unit-kind.ts';
import {
  findingsOver,
  isPossible,
  learnedRig,
  missingReadings,
  outcomeOf,
  usable,
  valuesIn,
} from '../../src/steps/outcome.ts';
import { tonesOff } from '../../src/steps/profile/tones-off.ts';
import { runOhms } from '../../src/steps/runs/run-ohms.ts';
import { faderCentre } from '../../src/steps/settings/fader-centre.ts';
import type { Answer, Step } from '../../src/steps/step.ts';
import { rearPair } from '../../src/steps/unit/rear-pair.ts';
import { anyStep, canBeUsed, judged, on } from './situation.ts';

const REAR = anyStep(rearPair);
const RUN = anyStep(runOhms);
const fader = faderCentre as unknown as Step;
const s = on({}, '0.001');
const volts = (text: string) => valuesIn({ readings: { frontV: text } }, REAR)['frontV'];
const ohms = (text: string) => valuesIn({ readings: { leftOhm: text } }, RUN)['leftOhm'];

describe('what a person types from a meter', () => {
  it.each([
    ['3.1', 3.1],
    ['3,1', 3.1],
    ['3.1 V', 3.1],
    [' 3.1V ', 3.1],
    ['310 mV', 0.31],
    ['0', 0],
  ])('“%s” is %f V', (text, value) => expect(volts(text)).toBe(value));
  it.each(['', '   ', 'loud', '3..1', '1.234.5', '3 A', 'OL', 'three'])('“%s” is no voltage', (text) => {
    expect(volts(text)).toBeUndefined();
  });
  it('“OL” is an open circuit in ohms', () => {
    expect(ohms('OL')).toBe(Infinity);
    expect(ohms('O.L')).toBe(Infinity);
    expect(ohms('2 kΩ')).toBe(2000);
  });
  it('is nothing where the answer was an option, “I can’t”, or was not given', () => {
    for (const answer of [undefined, { option: 'ok' }, { cannot: true }] as (Answer | undefined)[]) {
      expect(valuesIn(answer, REAR)).toEqual({});
    }
  });
  it('is left out where the step has no such reading', () => {
    expect(valuesIn({ readings: { frontV: '2', gearV: '5' } }, REAR)).toEqual({ frontV: 2 });
  });
});

describe('a value that a meter cannot show here', () => {
  const with_ = (frontV: string) => canBeUsed(rearPair, { frontV, leftV: '2', rightV: '2' }, s);
  it.each([
    ['16', true],
    ['16.1', false],
    ['80', false],
    ['-0.1', false],
    ['OL', false],
  ])('%s V across a pair of the head unit: usable is %s', (text, can) => expect(with_(text)).toBe(can));
  it('is below zero ohms, or open where two probes are held together', () => {
    expect(isPossible(RUN, 'leftOhm', -0.1)).toBe(false);
    expect(isPossible(RUN, 'leftOhm', 0)).toBe(true);
    expect(isPossible(RUN, 'leftOhm', Infinity)).toBe(true);
    expect(isPossible(RUN, 'leadsOhm', 5)).toBe(true);
    expect(isPossible(RUN, 'leadsOhm', 5.1)).toBe(false);
    expect(isPossible(RUN, 'leadsOhm', Infinity)).toBe(false);
    expect(isPossible(RUN, 'gearOhm', 1)).toBe(false);
  });
  it('is open volts: over range is never a voltage', () => expect(isPossible(REAR, 'frontV', Infinity)).toBe(false));
});

describe('an answer that cannot be used', () => {
  it('is missing a reading, and the missing one is named', () => {
    expect(missingReadings(REAR, { frontV: 2, leftV: 2 })).toEqual(['rightV']);
    expect(canBeUsed(rearPair, { frontV: 2, leftV: 2 }, s)).toBe(false);
  });
  it('may miss an optional reading', () => {
    expect(missingReadings(anyStep(tonesOff), { v400V: 0.5, v80V: 2.2 })).toEqual([]);
    expect(missingReadings(anyStep(tonesOff), { v400V: 0.5, v1000V: 0.5 })).toEqual(['v80V']);
  });
  it('is an option where readings are asked, readings where an option is asked, or an option that does not exist', () => {
    expect(usable(REAR, { option: 'ok' }, s)).toBe(false);
    expect(usable(fader, { readings: { frontV: '2' } }, s)).toBe(false);
    expect(usable(fader, { option: 'maybe' }, s)).toBe(false);
    expect(usable(fader, { option: 'toString' }, s)).toBe(false);
    expect(usable(fader, { option: 'cured' }, s)).toBe(true);
  });
  it('counts as not given, so the step is asked again', () => {
    expect(judged(rearPair, { frontV: 80, leftV: 2, rightV: 2 }, s)).toBeUndefined();
    expect(outcomeOf(fader, { rig: {}, facts: { 'fader-centre': { option: 'maybe' } } })).toBeUndefined();
  });
  it('is never “I can’t”, which every step takes', () => {
    for (const step of noRearSound.steps.values()) {
      expect(usable(step, { cannot: true }, s)).toBe(true);
      expect(outcomeOf(step, { rig: {}, facts: { [step.id]: { cannot: true } } })).toBe('cannot');
    }
  });
});

describe('outcomeOf', () => {
  const unit = unitKind as unknown as Step;
  it('is undefined while a question is open', () => {
    expect(outcomeOf(fader, { rig: {}, facts: {} })).toBeUndefined();
    expect(outcomeOf(REAR, { rig: {}, facts: {} })).toBeUndefined();
  });
  it('takes a question about what is fitted as answered by a bike that says so', () => {
    expect(outcomeOf(unit, { rig: {}, facts: {} })).toBeUndefined();
    expect(outcomeOf(unit, { rig: { unitKind: 'replaced' }, facts: {} })).toBe('replaced');
  });
  it('lets an answer in the case win over the bike', () => {
    const facts = { 'unit-kind': { option: 'factory' } };
    expect(outcomeOf(unit, { rig: { unitKind: 'replaced' }, facts })).toBe('factory');
  });
});

describe('learnedRig', () => {
  const steps = [unitKind, rearDrive, rearRating] as unknown as Step[];
  it('adds what the answers say to what was known', () => {
    const facts = { 'unit-kind': { option: 'replaced' }, 'rear-rating': { option: '2' } };
    expect(learnedRig({ batteryAh: 20 }, steps, facts)).toEqual({
      batteryAh: 20,
      unitKind: 'replaced',
      rearRatedOhm: 2,
    });
  });
  it('learns nothing from “I can’t” or from an option that does not exist', () => {
    const facts = { 'unit-kind': { cannot: true }, 'rear-rating': { option: '16' } } as const;
    expect(learnedRig({}, steps, facts)).toEqual({});
  });
  it('keeps the exact ohms of a bike that knows them, instead of the answer they stand for', () => {
    expect(learnedRig({ rearRatedOhm: 3.2 }, steps, {})).toEqual({ rearRatedOhm: 3.2 });
  });
  it('gives the amplifier of a rear that is only known to be amplified a place in the list', () => {
    expect(learnedRig({ rearFedBy: 'amp' }, steps, {})).toEqual({ rearFedBy: 'amp', amps: [{ drives: 'rear' }] });
    expect(learnedRig({ amps: [{ drives: 'both', turnOn: 'dc' }] }, steps, {})).toEqual({
      rearFedBy: 'amp',
      amps: [{ drives: 'both', turnOn: 'dc' }],
    });
    expect(learnedRig({ amps: [] }, steps, {})).toEqual({ amps: [] });
  });
});

describe('findings', () => {
  const findings = findingsOver(noRearSound.steps)({
    rig: {},
    facts: {
      'wire-to-frame': { readings: { lowestOhm: '0.8' } },
      'tones-off': { readings: { v400V: '0.5', v80V: '2.2' } },
    },
  });
  it('give the outcome and the numbers of an answered step', () => {
    expect(findings.outcome('wire-to-frame')).toBe('shorted');
    expect(findings.values('wire-to-frame')).toEqual({ lowestOhm: 0.8 });
  });
  it('count a step of another flow as not asked', () => {
    expect(findings.outcome('tones-off')).toBeUndefined();
    expect(findings.values('tones-off')).toEqual({});
  });
  it('have no numbers for a question', () => expect(findings.values('fader-centre')).toEqual({}));
});
