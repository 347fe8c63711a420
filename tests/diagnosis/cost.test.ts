import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
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
  // Common practice, no published source.
  it('puts a lamp before a new fuse, plus and ground before a jumper, and ohms before runs are plugged in again', () => {
    const firstOf = (id: string) => comesAfter(ampWontTurnOn.steps.get(id) ?? expect.fail(id), ampWontTurnOn.steps);
    expect(firstOf('spare-fuse')).toContain('fuse-lamp');
    expect(firstOf('remote-jumper')).toContain('amp-terminals');
    expect(firstOf('one-by-one')).toEqual(expect.arrayContaining(['amp-wires-to-frame', 'amp-runs']));
  });
  it('puts what is given under an answer after it, unless the bike says it', () => {
    expect(firstBefore('rear-pair-again')).toContain('meter-digit');
    expect(firstBefore('run-ohms')).not.toContain('rear-drive');
  });
  it.each([noRearSound, ampWontTurnOn].map((flow) => [flow.id, flow] as const))(
    'never goes round in a circle in %s',
    (_, flow) => {
      const reaches = (id: string, seen: readonly string[]): boolean => {
        const step = flow.steps.get(id) ?? expect.fail(id);
        return seen.includes(id) || comesAfter(step, flow.steps).some((other) => reaches(other, [...seen, id]));
      };
      for (const id of flow.steps.keys()) expect(reaches(id, []), id).toBe(false);
    },
  );
});
