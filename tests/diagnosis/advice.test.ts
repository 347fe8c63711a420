import { describe, expect, it } from 'vitest';
import { answerToCheck } from '../../src/diagnosis/advice.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { choice, rigQuestion, type Step } from '../../src/steps/step.ts';

/* A pump that does not start, made up for the test: its fuse leaves the lamp off, its motor leaves it on. */
const common = { place: 'told', how: [], why: '', tool: 'none', observes: [], phone: '', ask: '', short: '' } as const;
const onOff = { on: 'On', off: 'Off' };
const lamp = choice({ ...common, id: 'lamp', minutes: 1, options: onOff, outcomes: onOff });
const hum = choice({ ...common, id: 'hum', minutes: 5, options: onOff, outcomes: onOff });
const kind = rigQuestion<'old' | 'new'>({
  ...common,
  id: 'kind',
  minutes: 0.5,
  options: { old: 'Old', new: 'New' },
  outcomes: { old: 'old', new: 'new' },
  ifCannot: 'We take it as old.',
  known: (rig) => (rig.name === 'new' ? 'new' : undefined),
  learn: (_, rig) => rig,
});
const STEPS = new Map([lamp, hum, kind].map((step) => [step.id, step as unknown as Step]));
const EVIDENCE = {
  evidence: [
    { weight: 1, shows: { lamp: { off: 1 }, hum: { off: 1 }, kind: { old: 1 } } },
    { weight: 1, shows: { lamp: { on: 1 }, hum: { on: 1 }, kind: { new: 1 } } },
  ],
  sound: {},
};
const named = (answers: Readonly<Record<string, string>>, rig: Rig = {}, checked: readonly string[] = []) => {
  const facts = Object.fromEntries(Object.entries(answers).map(([step, option]) => [step, { option }]));
  return answerToCheck(STEPS, { rig, facts }, EVIDENCE, new Set(checked))?.step;
};

describe('the answer to check again', () => {
  it('is none while one cause shows everything', () => {
    expect(named({})).toBeUndefined();
    expect(named({ lamp: 'off', hum: 'off' })).toBeUndefined();
  });
  it('is the one that takes the fewest minutes, of two that clash', () => {
    expect(named({ lamp: 'on', hum: 'off' })).toBe('lamp');
  });
  it('is one of those that were not checked yet, and none once all were', () => {
    expect(named({ lamp: 'on', hum: 'off' }, {}, ['lamp'])).toBe('hum');
    expect(named({ lamp: 'on', hum: 'off' }, {}, ['lamp', 'hum'])).toBeUndefined();
  });
  it('may be what is saved of the bike, though it was not asked', () => {
    expect(named({ lamp: 'off', hum: 'off' }, { name: 'new' })).toBe('kind');
  });
  it('is never one that could not be given', () => {
    const facts = { lamp: { cannot: true }, hum: { option: 'off' } } as const;
    expect(answerToCheck(STEPS, { rig: { name: 'new' }, facts }, EVIDENCE, new Set(['kind', 'hum']))).toBeNull();
  });
});
