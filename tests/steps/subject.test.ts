import { describe, expect, expectTypeOf, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ampLight } from '../../src/steps/amplifier/amp-light.ts';
import { toDo, wordsOf } from '../../src/steps/conditions.ts';
import { findingsOver } from '../../src/steps/outcome.ts';
import { coilOhms } from '../../src/steps/runs/coil-ohms.ts';
import { runOhms } from '../../src/steps/runs/run-ohms.ts';
import { inWords, type ReadingStep, type Situation, type Step } from '../../src/steps/step.ts';
import { about, eachOf } from '../../src/steps/subject.ts';
import { ampTerminals } from '../../src/steps/supply/amp-terminals.ts';
import { supplyUnderLoad } from '../../src/steps/supply/supply-under-load.ts';
import { judged, on } from './situation.ts';

const FRONT_LEFT = about(coilOhms, 'front-left');
const asked = (step: { readonly ask: ReadingStep['ask'] }, situation: Situation) => inWords(step.ask, situation);
const told = (option: string, rest: Situation['facts'] = {}): Situation => ({
  rig: EXAMPLE_RIGS['frame-fairing'],
  facts: { 'which-silent': { option }, ...rest },
});

describe('a step that can be asked of several things', () => {
  it('is about the first of them by itself, and then goes by its id alone', () => {
    expect(about(coilOhms, 'silent')).toBe(coilOhms);
    expect(coilOhms.id).toBe('coil-ohms');
  });
  it('has answers of its own for each of the others, and is the same step whoever asks for it', () => {
    expect(FRONT_LEFT.id).toBe('coil-ohms@front-left');
    expect(FRONT_LEFT.about).toMatchObject({ step: 'coil-ohms', subject: 'front-left' });
    expect(about(coilOhms, 'front-left')).toBe(FRONT_LEFT);
    expect(new Set(eachOf(coilOhms).map(({ id }) => id)).size).toBe(5);
    expectTypeOf(FRONT_LEFT.outcomes).toEqualTypeOf(coilOhms.outcomes);
  });
  it('is not asked of what it has no words for', () => {
    // @ts-expect-error a coil is one speaker's, not an axle's
    expect(() => about(coilOhms, 'front')).toThrow(
      /^coil-ohms must be about one of silent, front-left, .*, got front$/,
    );
  });
  it('is given under answers about the same thing', () => {
    expect(about(runOhms, 'front').givenUnder).toEqual(['front-drive', 'front-fed']);
    expect(runOhms.givenUnder).toEqual(['rear-drive']);
  });
});

describe('the silent speaker', () => {
  const runs = (leftOhm: string, rightOhm: string) => ({
    'run-ohms': { readings: { leadsOhm: '0.2', leftOhm, rightOhm } },
  });
  it('is called silent until somebody says which one it is, and then by its place', () => {
    expect(asked(coilOhms, on({}))).toMatch(/^At the silent speaker itself/);
    expect(asked(coilOhms, told('both'))).toMatch(/^At the silent speaker itself/);
    expect(asked(coilOhms, told('left'))).toMatch(/^At the rear left speaker itself/);
    expect(inWords(coilOhms.short, told('right'))).toBe('The coil by itself, rear right');
  });
  it('is the one whose run reads worse than the other, whatever was told', () => {
    expect(asked(coilOhms, told('both', runs('OL', '3.8')))).toMatch(/rear left speaker/);
    expect(asked(coilOhms, told('both', runs('3.8', '0.6')))).toMatch(/rear right speaker/);
    expect(asked(coilOhms, told('left', runs('3.8', 'OL')))).toMatch(/rear right speaker/);
    expect(asked(coilOhms, told('left', runs('OL', 'OL')))).toMatch(/rear left speaker/);
  });
  it('may be any corner, or of a side whichever run reads worse', () => {
    const corner = (option: string, rest: Situation['facts'] = {}): Situation => ({
      rig: {},
      facts: { 'which-corner': { option }, ...rest },
    });
    const frontRuns = { 'run-ohms@front': { readings: { leadsOhm: '0.2', leftOhm: 'OL', rightOhm: '3.8' } } };
    expect(asked(coilOhms, corner('front-right'))).toMatch(/^At the front right speaker itself/);
    expect(asked(coilOhms, corner('front-right', frontRuns))).toMatch(/^At the front left speaker itself/);
    expect(asked(coilOhms, corner('left'))).toMatch(/^At the silent speaker itself/);
    expect(asked(coilOhms, corner('left', frontRuns))).toMatch(/^At the front left speaker itself/);
    expect(asked(coilOhms, corner('left', runs('OL', '3.8')))).toMatch(/^At the rear left speaker itself/);
  });
  it('goes by its place wherever a step names the place', () =>
    expect(asked(FRONT_LEFT, told('right'))).toMatch(/^At the front left speaker itself/));
});

/* A coil reads 0.7 to 0.95 of its rated ohms: common practice, no published source. */
describe('the bands of a step', () => {
  const rig = { frontRatedOhm: 2, rearRatedOhm: 8 } as const;
  it('are those of the speaker that it is about', () => {
    expect(judged(FRONT_LEFT, { leadsOhm: 0, coilOhm: 1.7 }, on(rig))).toBe('ok');
    expect(judged(coilOhms, { leadsOhm: 0, coilOhm: 1.7 }, on(rig))).toBe('low');
    expect(judged(FRONT_LEFT, { leadsOhm: 0, coilOhm: 6.5 }, on(rig))).toBe('unclear');
    expect(judged(coilOhms, { leadsOhm: 0, coilOhm: 6.5 }, on(rig))).toBe('ok');
  });
  it('are those of the axle that it is about', () => {
    const readings = { leadsOhm: 0, leftOhm: 1.8, rightOhm: 1.9 };
    expect(judged(about(runOhms, 'front'), readings, on(rig))).toBe('ok');
    expect(judged(runOhms, readings, on({ ...rig, rearPerChannel: 1, rearWiring: 'single' }))).toBe('low');
  });
});

describe('a step about an amplifier', () => {
  const TWO = EXAMPLE_RIGS.trunk;
  const atFront = about(ampTerminals, 'front');
  it('names it where the bike has two, and where a question is about one by its name', () => {
    const meant = (option: string): Situation => ({ rig: TWO, facts: { 'which-amp': { option } } });
    expect(asked(ampTerminals, on({}))).toMatch(/^At the amplifier:/);
    expect(asked(ampTerminals, meant('front'))).toMatch(/^At the front amplifier:/);
    expect(asked(ampTerminals, meant('rear'))).toMatch(/^At the rear amplifier:/);
    expect(asked(atFront, meant('rear'))).toMatch(/^At the front amplifier:/);
    expect(inWords(about(ampLight, 'front').short, meant('rear'))).toBe('Amplifier light, front amplifier');
  });
  it('asks for its own cover to be off: that of the other tells nothing', () => {
    expect(atFront.conditions).toContain('amp-uncovered@front');
    expect(atFront.conditions).toContain('meter-on-dc');
    const { next } = toDo(atFront.conditions ?? [], ampTerminals.conditions ?? [], { rig: TWO, facts: {} });
    expect(next).toEqual(['amp-uncovered@front']);
    expect(wordsOf('amp-uncovered@front', { rig: TWO, facts: {} }).bike).toMatch(/over the front amplifier\.$/);
  });
  it('makes sense by what is known of that amplifier, and of no other', () => {
    const steps = new Map([ampTerminals, atFront, ...eachOf(supplyUnderLoad)].map((step) => [step.id, step as Step]));
    const volts = (plusV: string) => ({ readings: { batteryV: '12.6', plusV, groundV: '0.02' } });
    const sensible = (key: string, facts: Situation['facts'], rig: Rig = TWO) =>
      steps.get(key)?.sensible?.(findingsOver(steps)({ rig, facts: { 'which-amp': { option: 'rear' }, ...facts } }));
    expect(sensible('supply-under-load', { 'amp-terminals': volts('12.5') })).toBe(true);
    expect(sensible('supply-under-load@front', { 'amp-terminals': volts('12.5') })).toBe(false);
    expect(sensible('supply-under-load@front', { 'amp-terminals@front': volts('12.5') })).toBe(true);
    expect(sensible('supply-under-load@front', { 'amp-terminals@front': volts('0') })).toBe(false);
    // The rear’s is the one that is meant: what is known of it counts for it by either name.
    expect(sensible('supply-under-load@rear', { 'amp-terminals': volts('12.5') })).toBe(true);
    expect(sensible('amp-terminals@front', {}, { amps: [{ drives: 'both' }] })).toBe(false);
  });
  it('is judged by the leads of that amplifier', () => {
    const rig: Rig = {
      amps: [
        { drives: 'rear', plusLeadM: 1, plusLeadM2: 21e-6, powerW: 150, channels: 2 },
        { drives: 'front', plusLeadM: 3, plusLeadM2: 3.3e-6, powerW: 40, channels: 2 },
      ],
    };
    const readings = { batteryV: 12.4, ampV: 12.25, plusDropV: 0.12, groundDropV: 0.03 };
    expect(judged(about(supplyUnderLoad, 'front'), readings, on(rig))).toBe('ok');
    expect(judged(about(supplyUnderLoad, 'rear'), readings, on(rig))).toBe('plus-worn');
    expect(judged(supplyUnderLoad, readings, on(rig))).toBe('plus-worn');
  });
});
