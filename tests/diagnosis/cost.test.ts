import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { comesAfter, minutesOf, SETUPS, setupsOf } from '../../src/diagnosis/cost.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import type { Step } from '../../src/steps/step.ts';

const { steps } = noRearSound;
const step = (id: string): Step => steps.get(id) ?? expect.fail(`no step ${id}`);

describe('the set-ups', () => {
  it('are the conditions that take a while, each needed by more than one step', () => {
    for (const { id, minutes } of SETUPS) {
      expect(minutes).toBeGreaterThan(0);
      const needing = Object.values(ALL_STEPS).filter((one) => setupsOf(one).some((setup) => setup.id === id));
      expect(needing.length, id).toBeGreaterThan(1);
    }
  });
});

describe('minutesOf', () => {
  it('pays each set-up once: tone, panel and speaker plugs serve the inputs after the rear pairs, 8 + 8 − 2 − 2 − 1 minutes', () => {
    expect(minutesOf([step('rear-pair')])).toBe(8);
    expect(minutesOf([step('rear-pair'), step('amp-in')])).toBe(11);
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
