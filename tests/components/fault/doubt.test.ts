import { describe, expect, it } from 'vitest';
import { anotherWay } from '../../../src/components/fault/another-way.ts';
import { doubtInWords } from '../../../src/components/fault/doubt.ts';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import type { Step } from '../../../src/steps/step.ts';
import { given, hum, shaft, view } from './fan.ts';

const steps = [hum, shaft].map((step) => step as Parameters<typeof doubtInWords>[1]);
const [humStep, shaftStep] = steps as [(typeof steps)[0], (typeof steps)[0]];

describe('an answer in doubt', () => {
  it('that does not fit: which, and what the likeliest cause would show instead', () => {
    const it_ = given({ hum: 'hums', shaft: 'free', socket: { socketV: '0' } });
    const says = doubtInWords(view(it_), humStep, 'misfit');
    expect(says).toBe(
      '“Hum: hums” does not fit the rest: “Breaker off” would show “silent”. Look once more, another way if you can: with another track, another ear, or somebody else at the grille.',
    );
  });
  it('that does not fit what another flow looks for: nothing is typical of all that it looks for', () => {
    expect(doubtInWords(view(given({ hum: 'hums', shaft: 'free' })), humStep, 'misfit')).toBe(
      '“Hum: hums” does not fit the rest. Look once more, another way if you can: with another track, another ear, or somebody else at the grille.',
    );
  });
  it('on which all hangs: that it does', () => {
    const says = doubtInWords(view(given({ shaft: 'stuck' })), shaftStep, 'pivotal');
    expect(says).toBe(
      'Everything rests on this answer: “Shaft: stuck”. Take it once more, another way if you can: in better light, by touch as well as by eye, or by somebody else.',
    );
  });
  it('is never called wrong', () => {
    for (const because of ['misfit', 'pivotal'] as const)
      expect(doubtInWords(view(given({ hum: 'hums' })), humStep, because)).not.toMatch(/wrong|slip|mistake|error/i);
  });
  it('names another way that fits what the answer was taken with', () => {
    const way = (id: keyof typeof ALL_STEPS) => anotherWay(ALL_STEPS[id] as Step);
    expect(way('run-ohms')).toMatch(/probes swapped/);
    expect(way('rear-pair')).toMatch(/range up/);
    expect(way('amp-terminals')).toMatch(/another bare ground/);
    expect(way('amp-light')).toMatch(/by ear/);
    expect(way('pin-look')).toMatch(/better light/);
    expect(way('last-change')).toMatch(/whoever was there/);
    for (const step of Object.values(ALL_STEPS) as readonly Step[]) {
      expect(anotherWay(step), step.id).toMatch(/^[A-Z].*[.?]$/);
      if (step.tool === 'meter') expect(anotherWay(step), step.id).toMatch(/probe/);
      else expect(anotherWay(step), step.id).not.toMatch(/probe/);
    }
  });
});
