import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { comesAfter, minutesOf, SETUPS, setupsOf } from '../../src/diagnosis/cost.ts';
import type { Step } from '../../src/steps/step.ts';

const { steps } = noRearSound;
const step = (id: string): Step => steps.get(id) ?? expect.fail(`no step ${id}`);

describe('the set-ups', () => {
  it.each(SETUPS.map((setup) => [setup.id, setup] as const))('“%s” belongs to steps that there are', (_, setup) => {
    for (const id of setup.steps) expect([...steps.keys()]).toContain(id);
    expect(setup.steps.length).toBeGreaterThan(1);
  });
  it('leave every step minutes of its own', () => {
    for (const [id, { minutes }] of steps) {
      const taken = setupsOf(id).reduce((sum, setup) => sum + setup.minutes, 0);
      expect(minutes - taken, id).toBeGreaterThan(0);
    }
  });
});

describe('minutesOf', () => {
  it('pays each set-up once: tones and panel serve the inputs after the rear pairs, 8 + 8 − 2 − 2 minutes', () => {
    expect(minutesOf([step('rear-pair')])).toBe(8);
    expect(minutesOf([step('rear-pair'), step('amp-in')])).toBe(12);
  });
  it('does not depend on the order', () => {
    const some = ['rear-pair', 'run-ohms', 'amp-in', 'coil-ohms', 'amp-out', 'wire-to-frame'].map(step);
    expect(minutesOf(some.toReversed())).toBeCloseTo(minutesOf(some), 12);
  });
});

describe('the order of steps', () => {
  const firstBefore = (id: string) => comesAfter(step(id), steps);
  it('asks for history before everything but what is fitted', () => {
    for (const [id, { kind }] of steps)
      if (kind !== 'rig' && id !== 'rear-history' && id !== 'last-change')
        expect(firstBefore(id)).toEqual(expect.arrayContaining(['last-change']));
  });
  it('puts settings before readings, and the lamp or the hiss before outputs are exchanged', () => {
    expect(firstBefore('rear-pair')).toContain('fader-centre');
    expect(firstBefore('swap-outputs')).toContain('rear-hiss');
    expect(firstBefore('coil-ohms')).toContain('run-ohms');
  });
  it('never goes round in a circle', () => {
    const reaches = (id: string, seen: readonly string[]): boolean =>
      seen.includes(id) || firstBefore(id).some((other) => reaches(other, [...seen, id]));
    for (const id of steps.keys()) expect(reaches(id, []), id).toBe(false);
  });
});
