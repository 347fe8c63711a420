import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figureText } from '../../src/causes/figure.ts';
import { fuseFigures, fuseInWords, fuseOnOldLeadA, fusePart, renewMainFuse } from '../../src/causes/main-fuse.ts';
import type { KnownAmp, Rig } from '../../src/rig/rig.ts';
import { anyAmp } from '../rig/any-rig.ts';
import { found, UNKNOWN } from './found.ts';

const MM2 = 1e-6;
const withAmp = (amp: KnownAmp): Rig => ({ amps: [{ drives: 'both', ...amp }] });
const on = (amp: KnownAmp) => found(withAmp(amp));

/*
 * 30, 40 and 70 A on 10, 8 and 6 gauge: common practice, no published source, under the 40, 55 and 80 A that 33 CFR
 * 183.425, table 5, allows for 60 °C insulation.
 */
describe('the main fuse on the lead that is there', () => {
  it('is the one that was in it where its lead carries it', () => {
    const f = on({ mainFuseA: 40, plusLeadM2: 8.37 * MM2 });
    expect(fuseInWords(f)).toBe('40 A, as before, on 8.37 mm² of copper');
    expect(renewMainFuse(f)).toEqual({ do: 'renew-fuse', fuse: 'main' });
    expect(fusePart(f)).toBe('One main fuse, 40 A');
    expect(fuseOnOldLeadA(f)).toBe(40);
  });
  it('is smaller than the one that was in it where that was too large for the lead', () => {
    const f = on({ mainFuseA: 60, plusLeadM2: 8.37 * MM2 });
    expect(fuseInWords(f)).toBe('40 A. 8.37 mm² of copper carries no more than that, whatever was in it');
    expect(renewMainFuse(f)).toEqual({ do: 'renew-fuse', fuse: 'main', ratedA: 40 });
    expect(fusePart(f)).toBe('One main fuse, 40 A');
    expect(fuseOnOldLeadA(f)).toBe(40);
  });
  it('is not cut down to a thin lead for somebody whose lead nobody has looked at', () => {
    const f = on({ mainFuseA: 60 });
    expect(fuseInWords(f)).toBe('60 A, as before, if its lead has 13.3 mm² of copper or more: its jacket says');
    expect(renewMainFuse(f)).toEqual({ do: 'renew-fuse', fuse: 'main' });
    expect(fuseOnOldLeadA(f)).toBe(60);
  });
  it('is the old rating, and what each usual lead carries, where nothing is known', () => {
    const f = found(UNKNOWN);
    expect(fuseInWords(f)).toMatch(/^the old rating, .*30 A on 5\.26 mm² .*40 A on 8\.37 mm² .*70 A on 13\.3 mm²/);
    expect(fuseFigures(f).map(figureText)).toEqual(['at most 30 A', 'at most 40 A', 'at most 70 A']);
    expect(fusePart(f)).toBe('One main fuse of the old rating');
    // A new holder on a lead that may be the thinnest usual one.
    expect(fuseOnOldLeadA(f)).toBe(30);
  });
  it('is at most 5 A on a lead too thin for the table', () => {
    expect(fuseFigures(on({ plusLeadM2: 0.75 * MM2 })).map(figureText)).toEqual(['at most 5 A']);
  });
  it('is never larger than a known lead carries, whatever was in it', () => {
    fc.assert(
      fc.property(anyAmp, (amp) => {
        const f = on(amp);
        const [first] = fuseFigures(f);
        if (amp.plusLeadM2 === undefined || typeof first?.value !== 'number') return;
        expect(fuseOnOldLeadA(f)).toBeLessThanOrEqual(first.value);
        const action = renewMainFuse(f);
        const ratedA = ('ratedA' in action ? action.ratedA : undefined) ?? amp.mainFuseA ?? 0;
        expect(ratedA).toBeLessThanOrEqual(first.value);
      }),
    );
  });
});
