import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullBassA } from '../../src/causes/amp-load.ts';
import type { Cause } from '../../src/causes/cause.ts';
import type { MainFuse, RepairAction } from '../../src/causes/repair-action.ts';
import { healthyInWords } from '../../src/causes/supply-ways.ts';
import { ampOf } from '../../src/causes/the-amp.ts';
import { formatQuantity } from '../../src/compute/quantity.ts';
import { ampEstimate, type Rig } from '../../src/rig/rig.ts';
import { supplyUnderLoad } from '../../src/steps/supply/supply-under-load.ts';
import { anyRig } from '../rig/any-rig.ts';
import { found, linesOf } from './found.ts';
import { POWER_CAUSES } from './power-causes.ts';

/* What the fixes of the power side do to leads and fuses, on any bike, held against published tables. */

const MM2 = 1e-6;
const RUNS = { numRuns: 400 };

/**
 * Allowable amperes of a copper lead by its section in mm², insulation of 60 °C, in 30 °C. Source: 33 CFR 183.425, table
 * 5; sections of the gauges: ASTM B258, as tables print them.
 */
const ALLOWED_A: readonly (readonly [mm2: number, allowedA: number])[] = [
  [0.82, 10],
  [1.3, 15],
  [2.08, 20],
  [3.3, 25],
  [5.25, 40],
  [8.36, 55],
  [13.2, 80],
  [21.1, 105],
  [33.6, 140],
  [42.4, 165],
  [53.4, 195],
  [67.4, 225],
  [85, 260],
  [107, 300],
];
const allowedA = (sectionM2: number): number => ALLOWED_A.findLast(([mm2]) => sectionM2 >= 0.995 * mm2 * MM2)?.[1] ?? 0;

type Lead = Extract<RepairAction, { do: 'renew-lead'; lead: 'plus' }>;
const isLead = (action: RepairAction): action is Lead => action.do === 'renew-lead' && action.lead === 'plus';
const isFuse = (action: RepairAction): action is RepairAction & MainFuse =>
  action.do === 'renew-holder' || (action.do === 'renew-fuse' && action.fuse === 'main');

const eachOf = (rig: Rig, look: (cause: Cause, action: RepairAction) => void) => {
  for (const cause of POWER_CAUSES) for (const action of cause.remedy(found(rig)).repair) look(cause, action);
};

describe('a positive lead that a fix names', () => {
  it('carries its fuse by the table, and its fuse carries full bass', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        eachOf(rig, (cause, action) => {
          if (!isLead(action)) return;
          expect(action.fuseA, cause.id).toBeLessThanOrEqual(allowedA(action.sectionM2));
          // The table of leads ends at 300 A; music averages a third of full bass at the most.
          expect(action.fuseA, cause.id).toBeGreaterThanOrEqual(Math.min(300, fullBassA(found(rig))));
        });
      }),
      RUNS,
    );
  });
  it('is no thinner than the one that is there, and neither is a new ground', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const { plusLeadM2 = 0 } = ampOf(found(rig));
        eachOf(rig, (cause, action) => {
          if (action.do !== 'renew-lead') return;
          expect(action.sectionM2, cause.id).toBeGreaterThanOrEqual((1 - 1e-9) * plusLeadM2);
        });
      }),
      RUNS,
    );
  });
  it('loses a quarter of a volt at full bass at the most', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const f = found(rig);
        const lengthM = ampEstimate(ampOf(f), 'plusLeadM').value;
        eachOf(rig, (cause, action) => {
          if (!isLead(action)) return;
          // U = I ρ l / A: 17.241 nΩ m (IEC 60028), soft cable 1.16 times that (IEC 60228, class 5).
          const lostV = (fullBassA(f) * 1.16 * 17.241e-9 * lengthM) / action.sectionM2;
          expect(lostV, cause.id).toBeLessThanOrEqual(0.25 * (1 + 1e-6));
        });
      }),
      RUNS,
    );
  });
  it('is named with its fuse wherever it is named', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        for (const cause of POWER_CAUSES) {
          const remedy = cause.remedy(found(rig));
          const lead = remedy.repair.find(isLead);
          if (!lead) continue;
          const both = `${formatQuantity(lead.sectionM2 / MM2, 'mm²', 3)} of copper with a ${formatQuantity(lead.fuseA, 'A')} fuse`;
          expect(linesOf(remedy).filter((line) => line.includes(both)).length, cause.id).toBeGreaterThan(1);
        }
      }),
      RUNS,
    );
  });
});

describe('a main fuse that a fix puts on the lead that is there', () => {
  it('is no larger than the table allows that lead, whatever was in it, and goes in after a lamp', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const { plusLeadM2 } = ampOf(found(rig));
        eachOf(rig, (cause, action) => {
          if (!isFuse(action)) return;
          expect(action.onceLampIsDark, cause.id).toBe(true);
          if (plusLeadM2 === undefined) return;
          const onLead = cause.remedy(found(rig)).repair.find(isLead)?.sectionM2 ?? plusLeadM2;
          const fuseA = Math.min(action.fuseA ?? Infinity, action.atMostA ?? Infinity);
          expect(fuseA, cause.id).toBeLessThanOrEqual(allowedA(onLead));
        });
      }),
      RUNS,
    );
  });
});

describe('the proof of a cure with the lamp', () => {
  it('asks for the end of the band that the question calls healthy', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const f = found(rig);
        for (const cause of POWER_CAUSES) {
          const { byMeter = '' } = cause.remedy(f).proofOfCure;
          for (const [asked] of byMeter.matchAll(/below [\d.]+ V(?= (?:lost|from))/g)) {
            const bands = (['plus', 'ground'] as const).map((way) => healthyInWords(f, way));
            expect(bands, cause.id).toContain(asked);
            expect(supplyUnderLoad.healthy({}, f)).toContain(asked.replace('below ', ''));
          }
        }
      }),
      RUNS,
    );
  });
});
