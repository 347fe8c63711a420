import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figureText } from '../../src/causes/figure.ts';
import { fuseFigures, fuseInWords, fuseParts, renewHolder, renewMainFuse } from '../../src/causes/main-fuse.ts';
import { largestFuseA } from '../../src/compute/fuse.ts';
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
    expect(renewMainFuse(f)).toEqual({ do: 'renew-fuse', fuse: 'main', fuseA: 40, onceLampIsDark: true });
    expect(renewHolder(f)).toEqual([{ do: 'renew-holder', fuseA: 40, onceLampIsDark: true }]);
    expect(fuseParts(f)).toEqual(['One main fuse, 40 A']);
  });
  it('is smaller than the one that was in it where that was too large for the lead', () => {
    const f = on({ mainFuseA: 60, plusLeadM2: 8.37 * MM2 });
    expect(fuseInWords(f)).toBe('40 A. 8.37 mm² of copper carries no more than that, whatever was in it');
    expect(renewMainFuse(f)).toEqual({ do: 'renew-fuse', fuse: 'main', fuseA: 40, onceLampIsDark: true });
    expect(renewHolder(f)).toEqual([{ do: 'renew-holder', fuseA: 40, onceLampIsDark: true }]);
    expect(fuseParts(f)).toEqual(['One main fuse, 40 A']);
  });
  it('is not cut down to a thin lead for somebody whose lead nobody has looked at', () => {
    const f = on({ mainFuseA: 60 });
    expect(fuseInWords(f)).toBe('60 A, as before, if its lead has 13.3 mm² of copper or more');
    expect(renewMainFuse(f)).toEqual({ do: 'renew-fuse', fuse: 'main', fuseA: 60, onceLampIsDark: true });
  });
  it('is the old rating, and no more than a known lead carries, where nobody knows the old one', () => {
    const f = on({ plusLeadM2: 5.26 * MM2 });
    expect(fuseInWords(f)).toBe('the old rating, at most 30 A on 5.26 mm² of copper');
    expect(renewMainFuse(f)).toEqual({ do: 'renew-fuse', fuse: 'main', atMostA: 30, onceLampIsDark: true });
    expect(renewHolder(f)).toEqual([{ do: 'renew-holder', atMostA: 30, onceLampIsDark: true }]);
    expect(fuseParts(f)).toEqual(['One main fuse of the old rating, at most 30 A']);
  });
  it('is the old rating, and what each usual lead carries, where nothing is known', () => {
    const f = found(UNKNOWN);
    expect(fuseInWords(f)).toMatch(/^the old rating, .*30 A on 5\.26 mm² .*40 A on 8\.37 mm² .*70 A on 13\.3 mm²/);
    expect(fuseFigures(f).map(figureText)).toEqual(['at most 20 A', 'at most 30 A', 'at most 40 A', 'at most 70 A']);
    expect(fuseParts(f)).toEqual(['One main fuse of the old rating']);
    expect(renewHolder(f)).toEqual([{ do: 'renew-holder', onceLampIsDark: true }]);
  });
  // 18 gauge, 0.823 mm², is the thinnest lead of 33 CFR 183.425, table 5.
  it('is none on a lead too thin for the table: that one gets a new lead with its fuse', () => {
    const f = on({ plusLeadM2: 0.75 * MM2, powerW: 90, plusLeadM: 1.6, mainFuseA: 40 });
    const lead = { do: 'renew-lead', lead: 'plus', sectionM2: 8.37 * MM2, fuseA: 40, onceLampIsDark: true };
    expect(fuseInWords(f)).toBe('none on 0.75 mm² of copper. A new lead first: 8.37 mm² of copper with a 40 A fuse');
    expect(renewMainFuse(f)).toEqual(lead);
    expect(renewHolder(f)).toEqual([{ do: 'renew-holder', fuseA: 40, onceLampIsDark: true }, lead]);
    expect(fuseParts(f)[0]).toBe('Positive lead: 1.6 m of 8.37 mm² of copper with a 40 A fuse');
    expect(fuseFigures(f).map(figureText)).toEqual(expect.arrayContaining(['at least 8.37 mm²', '40 A']));
  });
  it('is never larger than a known lead carries, whatever was in it', () => {
    fc.assert(
      fc.property(anyAmp, (amp) => {
        const f = on(amp);
        if (amp.plusLeadM2 === undefined) return;
        for (const action of [renewMainFuse(f), ...renewHolder(f)]) {
          if (action.do === 'renew-lead' || amp.plusLeadM2 < 0.823 * MM2) continue;
          const mostA = largestFuseA({ sectionM2: amp.plusLeadM2 });
          const { fuseA, atMostA } = action as { fuseA?: number; atMostA?: number };
          expect(Math.min(fuseA ?? Infinity, atMostA ?? Infinity)).toBeLessThanOrEqual(mostA);
        }
      }),
    );
  });
});
