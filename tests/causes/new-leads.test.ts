import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullBassA } from '../../src/causes/amp-load.ts';
import {
  beforeTheLead,
  groundLeadM2,
  newPlusLead,
  plusLeadInWords,
  tooThinForFullBass,
} from '../../src/causes/new-leads.ts';
import { healthyDropV } from '../../src/causes/supply-ways.ts';
import { ampOf } from '../../src/causes/the-amp.ts';
import { largestFuseA } from '../../src/compute/fuse.ts';
import { ampEstimate, type KnownAmp } from '../../src/rig/rig.ts';
import { LAMP_A } from '../../src/steps/supply/amp-feed.ts';
import { anyRig } from '../rig/any-rig.ts';
import { found, KNOWN, TWO_AMPS, UNKNOWN } from './found.ts';

const MM2 = 1e-6;
const on = (amp: KnownAmp) => found({ amps: [{ drives: 'both', powerW: 90, plusLeadM: 1.6, ...amp }] });
const RUNS = { numRuns: 3000 };

describe('a new positive lead', () => {
  it('is as thick as the old one, with a fuse that full bass does not open', () => {
    // 35.2 A on full bass.
    expect(plusLeadInWords(found(KNOWN))).toBe('8.37 mm² of copper with a 40 A fuse');
    expect(plusLeadInWords(on({ plusLeadM2: 3.31 * MM2, mainFuseA: 20 }))).toBe('8.37 mm² of copper with a 40 A fuse');
    expect(plusLeadInWords(on({ plusLeadM2: 13.3 * MM2, mainFuseA: 60 }))).toBe('13.3 mm² of copper with a 60 A fuse');
    expect(plusLeadInWords(on({ powerW: 150, plusLeadM2: 8.37 * MM2, mainFuseA: 40 }))).toBe(
      '13.3 mm² of copper with a 60 A fuse',
    );
    expect(plusLeadInWords(found(TWO_AMPS))).toBe('13.3 mm² of copper with a 60 A fuse');
  });
  it('is typical where nothing is known, and says what to read first', () => {
    expect(plusLeadInWords(found(UNKNOWN))).toBe('8.37 mm² of copper with a 40 A fuse');
    expect(beforeTheLead(found(UNKNOWN))).toEqual([
      'Read the section off the old lead’s jacket, and measure its length: never go thinner, whatever it says here.',
      'Check its watts and channels: this assumes 4 channels of 90 W (assumed). Four of 150 W need 13.3 mm² of copper with a 60 A fuse.',
    ]);
    expect(beforeTheLead(found(KNOWN))).toEqual([]);
  });
  it('keeps to the rules on any bike: no thinner, its fuse within lead and need', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const f = found(rig);
        const { sectionM2, fuseA } = newPlusLead(f);
        const amp = ampOf(f);
        if (amp.plusLeadM2 !== undefined) expect(sectionM2).toBeGreaterThanOrEqual((1 - 1e-9) * amp.plusLeadM2);
        expect(fuseA).toBeLessThanOrEqual(largestFuseA({ sectionM2 }));
        expect(fuseA).toBeGreaterThanOrEqual(Math.min(300, fullBassA(f)));
        expect(groundLeadM2(f)).toBe(sectionM2);
      }),
      RUNS,
    );
  });
  it('passes the proof of its cure: the lamp loses less on it than the question calls healthy', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const f = found(rig);
        const lengthM = ampEstimate(ampOf(f), 'plusLeadM').value;
        // 17.241 nΩ m (IEC 60028), soft cable 1.16 times (IEC 60228, class 5), 6 mΩ of fuse, holder and lugs (trade).
        const ohm = (1.16 * 17.241e-9 * lengthM) / newPlusLead(f).sectionM2 + 0.006;
        expect(LAMP_A * ohm).toBeLessThan(healthyDropV(f, 'plus'));
      }),
      RUNS,
    );
  });
});

describe('a lead that its own fuse is too small for', () => {
  it('is named with the lead that full bass wants', () => {
    expect(tooThinForFullBass(on({ plusLeadM2: 3.31 * MM2, mainFuseA: 20 }))).toBe(
      'Full bass takes more than 3.31 mm² of copper carries. If it blows again when loud and nothing is shorted, fit a lead of 8.37 mm² of copper with a 40 A fuse.',
    );
  });
  it('is not spoken of where it carries full bass, or where nobody knows', () => {
    expect(tooThinForFullBass(found(KNOWN))).toBeUndefined();
    expect(tooThinForFullBass(found(UNKNOWN))).toBeUndefined();
    expect(tooThinForFullBass(found({ amps: [{ drives: 'both', plusLeadM2: 3.31 * MM2 }] }))).toBeUndefined();
  });
});
