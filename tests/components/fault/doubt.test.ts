import { describe, expect, it } from 'vitest';
import { doubtInWords } from '../../../src/components/fault/doubt.ts';
import { given, hum, shaft, view } from './fan.ts';

const steps = [hum, shaft].map((step) => step as Parameters<typeof doubtInWords>[1]);
const [humStep, shaftStep] = steps as [(typeof steps)[0], (typeof steps)[0]];

describe('an answer in doubt', () => {
  it('that does not fit: which, and what the likeliest cause would show instead', () => {
    const it_ = given({ hum: 'hums', shaft: 'free', socket: { socketV: '0' } });
    const says = doubtInWords(view(it_), humStep, 'misfit');
    expect(says).toBe(
      '“Hum: hums” does not fit the rest: “Breaker off” would show “silent”. Look once more, another way if you can.',
    );
  });
  it('that does not fit what another flow looks for: nothing is typical of all that it looks for', () => {
    expect(doubtInWords(view(given({ hum: 'hums', shaft: 'free' })), humStep, 'misfit')).toBe(
      '“Hum: hums” does not fit the rest. Look once more, another way if you can.',
    );
  });
  it('on which all hangs: that it does', () => {
    const says = doubtInWords(view(given({ shaft: 'stuck' })), shaftStep, 'pivotal');
    expect(says).toBe('Everything rests on this answer: “Shaft: stuck”. Take it once more, another way if you can.');
  });
  it('is never called wrong', () => {
    for (const because of ['misfit', 'pivotal'] as const)
      expect(doubtInWords(view(given({ hum: 'hums' })), humStep, because)).not.toMatch(/wrong|slip|mistake|error/i);
  });
});
