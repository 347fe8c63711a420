import { describe, expect, it } from 'vitest';
import { said } from '../../../src/components/flow/said.ts';
import { tonesOff } from '../../../src/steps/profile/tones-off.ts';
import type { Step } from '../../../src/steps/step.ts';
import { rearPair } from '../../../src/steps/unit/rear-pair.ts';

const terminal = (step: unknown, outcome: string, readings: Readonly<Record<string, string>>) => ({
  step: step as Step,
  outcome,
  answer: { readings },
});

describe('what was answered, in a sentence', () => {
  it('keeps units as they are written: 400 Hz, not 400 hz', () => {
    expect(said(terminal(tonesOff, 'boosted', { v400V: '0.50', v80V: '2.2' }), true)).toBe(
      'bass boost in (400 Hz tone 0.50 V, 80 Hz tone 2.2 V)',
    );
  });
  it('begins a label with a small letter', () => {
    expect(said(terminal(rearPair, 'none', { frontV: '2.0', leftV: '0', rightV: '0' }), true)).toMatch(
      /\(front pair 2\.0 V, rear left pair 0 V/,
    );
  });
});
