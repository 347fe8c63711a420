import { describe, expect, it } from 'vitest';
import { answered, repaired, revised } from '../../../src/case/change.ts';
import type { Case } from '../../../src/case/events.ts';
import { FAULT_FLOWS } from '../../../src/case/flows.ts';
import { readyFor, toDoFor } from '../../../src/components/flow/ready.ts';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import { CONDITIONS, type ConditionKey, conditionOf } from '../../../src/steps/conditions.ts';
import type { Step } from '../../../src/steps/step.ts';

const steps = new Map(Object.values(ALL_STEPS).map((step) => [step.id, step as Step]));
const begun: Case = { flow: 'no-rear-sound', events: [{ type: 'rig', rig: {} }] };
const done = (...ids: readonly string[]): Case =>
  ids.reduce((it, step) => answered(it, step, { option: 'any' }), begun);
const readyAt = (id: string, it: Case) => {
  const { stood: _, ...rest } = toDoFor(steps.get(id) as Step, it, steps, { rig: {}, facts: {} });
  return rest;
};

describe('what has to be done before a question', () => {
  it('is everything that it needs, where nothing was done yet', () => {
    expect(readyAt('run-ohms', begun)).toEqual({
      putBack: [],
      next: ['key-off', 'rear-plug-apart', 'meter-on-ohms'],
      standing: [],
    });
  });
  it('is only what does not stand from the step before; that is named', () => {
    expect(readyAt('coil-ohms', done('run-ohms'))).toEqual({
      putBack: ['rear-plug-apart'],
      next: ['grille-off'],
      standing: ['key-off', 'meter-on-ohms'],
    });
  });
  it('is first to put back what stands open and is of no use to it', () => {
    const { putBack, next } = readyAt('fader-centre', done('run-ohms'));
    expect(putBack).toContain('rear-plug-apart');
    expect(next).not.toContain('rear-plug-apart');
  });
  it('is nothing more for a question that does not touch the bike: what is open stays so, and stands for the next', () => {
    expect(readyAt('tools-at-hand', done('run-ohms'))).toEqual({ putBack: [], next: [], standing: [] });
    expect(readyAt('run-ohms', done('run-ohms', 'tools-at-hand')).next).toEqual([]);
  });
  it('counts what could not be done as not done', () => {
    expect(readyAt('run-ohms', answered(begun, 'run-ohms', { cannot: true })).next).toContain('rear-plug-apart');
  });
  it('starts anew after a repair, and not after a check that said that it is not this', () => {
    expect(readyAt('run-ohms', repaired(done('run-ohms'), 'coil-open')).next).toContain('rear-plug-apart');
    expect(readyAt('run-ohms', repaired(done('run-ohms'), 'coil-open', 'not-it')).next).toEqual([]);
  });
  it('goes by what was done last, not by what was asked first', () => {
    const again = revised(done('run-ohms', 'fader-centre'), 'run-ohms', { option: 'any' });
    expect(readyAt('run-ohms', again).next).toEqual([]);
  });
});

const needs = (id: string): readonly ConditionKey[] => steps.get(id)?.conditions ?? [];

describe('every step after every other', () => {
  it('ends up with all that it needs on this bike, done or standing, and with nothing else open', () => {
    const anywhere = (id: ConditionKey) => conditionOf(id).where === undefined;
    for (const first of steps.keys())
      for (const then of steps.keys()) {
        const { putBack, next, standing } = readyAt(then, done(first));
        for (const id of needs(then).filter(anywhere))
          expect([...next, ...standing], `${first}, ${then}`).toContain(id);
        for (const id of putBack) expect(needs(then), `${first}, ${then}`).not.toContain(id);
      }
  });
});

describe('what has to be done, in words', () => {
  const words = (id: string) => readyFor(steps.get(id) as Step, begun, steps, { rig: {}, facts: {} });
  it('says key off once where the next thing begins with it', () => {
    expect(words('run-ohms').bike.filter((line) => line === CONDITIONS['key-off'].bike)).toEqual([]);
    expect(words('run-ohms').bike[0]).toMatch(/^Key off\./);
    expect(words('run-ohms').phone[0]).toMatch(/^Key off/);
  });
});

describe('what is fitted and told', () => {
  it('needs nothing done first: it is asked before the words for that have arrived', async () => {
    for (const [, flow] of FAULT_FLOWS) {
      const { fitted, told } = await flow.open();
      for (const step of [...fitted, ...told]) expect([step.id, step.conditions ?? []]).toEqual([step.id, []]);
    }
  });
});
