import { describe, expect, it } from 'vitest';
import type { Case } from '../../../src/case/events.ts';
import { ahead } from '../../../src/components/flow/ahead.ts';

const answering = (option: string): Case => ({
  flow: 'no-rear-sound',
  events: [{ type: 'answer', step: 'any', answer: { option } }],
});

/** Counts how often a case was worked out. */
function counted() {
  const times = new Map<string, number>();
  const stood = ahead((it) => {
    const text = JSON.stringify(it);
    times.set(text, (times.get(text) ?? 0) + 1);
    return { of: text };
  });
  return { stood, times: (it: Case) => times.get(JSON.stringify(it)) ?? 0 };
}

describe('what is worked out ahead of a tap', () => {
  it('is worked out once, though the tap makes the case anew', () => {
    const { stood, times } = counted();
    const before = stood.of(answering('yes'));
    expect(stood.of(answering('yes'))).toBe(before);
    expect(times(answering('yes'))).toBe(1);
  });

  it('tells cases apart by their answers', () => {
    const { stood } = counted();
    expect(stood.of(answering('yes'))).not.toEqual(stood.of(answering('no')));
  });

  it('is forgotten once no tap leads there', () => {
    const { stood, times } = counted();
    stood.of(answering('yes'));
    stood.of(answering('no'));
    stood.keepOnly([answering('no')]);
    stood.of(answering('no'));
    stood.of(answering('yes'));
    expect(times(answering('no'))).toBe(1);
    expect(times(answering('yes'))).toBe(2);
  });
});
