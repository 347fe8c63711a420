import { describe, expect, it } from 'vitest';
import {
  requireFinite,
  requireNotNegative,
  requirePositive,
  requireWhole,
  requireWithin,
} from '../../src/compute/require.ts';

describe('the checks of contracts', () => {
  it('let good values pass without a word', () => {
    expect(() => requirePositive({ lengthM: 1e-9, powerW: 1e9 })).not.toThrow();
    expect(() => requireNotNegative({ powerW: 0 })).not.toThrow();
    expect(() => requireFinite({ gainDb: -120 })).not.toThrow();
    expect(() => requireWithin({ averageRatio: 0 }, 0, 1)).not.toThrow();
    expect(() => requireWithin({ averageRatio: 1 }, 0, 1)).not.toThrow();
    expect(() => requireWhole({ channels: 4 }, 1, 16)).not.toThrow();
  });
  it('name the argument that is wrong, not its neighbours', () => {
    expect(() => requirePositive({ lengthM: 1, powerW: 0 })).toThrow(/^powerW must be finite and above 0, got 0$/);
  });
  it('never let NaN through', () => {
    for (const check of [requirePositive, requireNotNegative, requireFinite]) {
      expect(() => check({ gainDb: Number.NaN })).toThrow(/^gainDb must be finite.*, got NaN$/);
    }
    expect(() => requireWithin({ gainDb: Number.NaN }, 0, 1)).toThrow(/^gainDb must be from 0 to 1, got NaN$/);
    expect(() => requireWhole({ count: Number.NaN }, 0, 1)).toThrow(/^count must be from 0 to 1, got NaN$/);
  });
});
