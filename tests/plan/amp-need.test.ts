import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AMP_NEEDS, ampNeed, assumedNeed, needOf, whoSelectsAmplified } from '../../src/plan/amp-need.ts';
import type { KnownAmp } from '../../src/rig/rig.ts';
import { AMP_OF } from './known.ts';

const perhaps = <T>(...values: T[]) => fc.constantFrom(...values, undefined);
const anyAmp: fc.Arbitrary<KnownAmp> = fc
  .record({
    kind: perhaps('add-on' as const, 'factory' as const),
    turnOn: perhaps('wire' as const, 'signal' as const, 'dc' as const),
    needs: perhaps('any' as const, 'unaltered' as const),
  })
  .map((amp) => Object.fromEntries(Object.entries(amp).filter(([, value]) => value !== undefined)));
const anyAmps = fc.array(anyAmp, { maxLength: 4 });
const rank = (amps: readonly KnownAmp[]) => AMP_NEEDS.indexOf(ampNeed(amps));

describe('needOf', () => {
  it.each(AMP_NEEDS.filter((need) => need !== 'none'))('knows an amplifier of the kind %s', (need) => {
    expect(AMP_OF[need].map(needOf)).toEqual([need]);
  });
  it('takes one that listens as needing the unaltered output until its needs are known', () => {
    expect(needOf({ turnOn: 'dc' })).toBe('unaltered');
    expect(needOf({ turnOn: 'signal' })).toBe('unaltered');
    expect(needOf({ turnOn: 'signal', needs: 'any' })).toBe('flexible');
  });
  it('does not know an amplifier of which neither switching nor needs are known', () => {
    expect(needOf({ kind: 'add-on' })).toBe('unknown');
    expect(needOf({})).toBe('unknown');
  });
  it('believes papers that ask for the unaltered output even where there is a remote wire', () => {
    expect(needOf({ turnOn: 'wire', needs: 'unaltered' })).toBe('unaltered');
  });
});

describe('ampNeed', () => {
  it('is none without an amplifier', () => expect(ampNeed([])).toBe('none'));
  it('does not depend on the order of the list', () => {
    fc.assert(
      fc.property(anyAmps, (amps) => {
        expect(ampNeed(amps.toReversed())).toBe(ampNeed(amps));
        expect(ampNeed([...amps.slice(1), ...amps.slice(0, 1)])).toBe(ampNeed(amps));
      }),
    );
  });
  it('never gets easier to please by one more amplifier', () => {
    fc.assert(fc.property(anyAmps, anyAmp, (amps, one) => rank([...amps, one]) >= Math.max(rank(amps), rank([one]))));
  });
  it('is that of the amplifier that is hardest to please', () => {
    expect(ampNeed([...AMP_OF.factory, ...AMP_OF.unaltered, ...AMP_OF.wire])).toBe('unaltered');
    expect(ampNeed([...AMP_OF.flexible, ...AMP_OF.unknown])).toBe('unknown');
  });
});

describe('assumedNeed', () => {
  it('is the unaltered output for one that listens, until a paper says so', () => {
    expect(assumedNeed([{ turnOn: 'signal' }])).toBe('unaltered');
    expect(assumedNeed(AMP_OF.unaltered)).toBeNull();
  });
  it('is any source for one with a remote wire, until a paper says so', () => {
    expect(assumedNeed([{ kind: 'add-on', turnOn: 'wire' }])).toBe('any');
    expect(assumedNeed(AMP_OF.wire)).toBeNull();
    expect(assumedNeed(AMP_OF.factory)).toBeNull();
  });
  it('matters no more once one amplifier is known to need the unaltered output', () => {
    expect(assumedNeed([{ turnOn: 'signal' }, { kind: 'add-on', turnOn: 'wire' }, ...AMP_OF.unaltered])).toBeNull();
  });
});

describe('whoSelectsAmplified', () => {
  it('names the dealer only where a factory amplifier can answer', () => {
    expect(whoSelectsAmplified(AMP_OF.factory, true)).toMatch(/^A dealer or .*because/);
    expect(whoSelectsAmplified([...AMP_OF.wire, ...AMP_OF.factory], false)).toMatch(
      /^A dealer or .*fault to mend first/,
    );
    expect(whoSelectsAmplified(AMP_OF.wire, false)).toMatch(/^An independent specialist\. /);
    expect(whoSelectsAmplified([{ turnOn: 'wire' }], false)).toMatch(/in any case/);
  });
});
