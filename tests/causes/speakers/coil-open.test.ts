import { describe, expect, it } from 'vitest';
import { titleOf } from '../../../src/causes/cause.ts';
import { coilOpen } from '../../../src/causes/speakers/coil-open.ts';
import type { Findings } from '../../../src/steps/outcome.ts';
import { ON_AMP, ON_UNIT, onBike } from '../on-bike.ts';

describe('an open coil', () => {
  it('has its side in title and repair where one run is open and the other is not', () => {
    const findings = onBike(ON_AMP, {}, { 'run-ohms': { leadsOhm: 0.2, leftOhm: Infinity, rightOhm: 3.5 } });
    expect(titleOf(coilOpen, findings)).toBe('Rear left speaker dead: coil open');
    expect(coilOpen.remedy(findings).repair).toEqual([{ do: 'replace-speaker', where: 'rear-left' }]);
  });
  it('has the side that is silent alone where no run was read, and leaves it where the runs read alike', () => {
    const told: Findings = { ...onBike(ON_AMP), facts: { 'which-silent': { option: 'right' } } };
    expect(titleOf(coilOpen, told)).toBe('Rear right speaker dead: coil open');
    expect(coilOpen.remedy(told).repair).toMatchObject([{ where: 'rear-right' }]);
    const alike = onBike(ON_AMP, {}, { 'run-ohms': { leadsOhm: 0.2, leftOhm: Infinity, rightOhm: Infinity } });
    expect(titleOf(coilOpen, { ...alike, facts: told.facts })).toBe('Rear speaker dead: coil open');
  });
  it('is both of them where both runs are open, or nobody read them', () => {
    const both = onBike(ON_AMP, {}, { 'run-ohms': { leadsOhm: 0.2, leftOhm: Infinity, rightOhm: Infinity } });
    for (const findings of [both, onBike(ON_AMP)]) {
      expect(titleOf(coilOpen, findings)).toBe('Rear speaker dead: coil open');
      expect(coilOpen.remedy(findings).repair).toMatchObject([{ where: 'rear' }]);
    }
  });
  it('asks for the ohms on the old magnet where nobody knows them', () => {
    expect(coilOpen.remedy(onBike({})).parts[0]).toMatch(/the ohms printed on the old one’s magnet/);
    expect(coilOpen.remedy(onBike({ rearRatedOhm: 2 })).parts[0]).toMatch(/2 Ω/);
  });
  // DC across an output of less than 50 mV: from memory, no published source.
  it('is looked into before the next one goes in: DC of the amplifier, or a bass turned up', () => {
    expect(coilOpen.remedy(onBike(ON_AMP)).fix.join(' ')).toMatch(/DC across each of its outputs below 0\.05 V/);
    expect(coilOpen.remedy(onBike(ON_UNIT)).fix.join(' ')).toMatch(/no DC between the two wires/);
    expect(coilOpen.remedy(onBike(ON_UNIT)).cautions).not.toContain('amp-output');
  });
});
