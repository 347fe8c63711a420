import { describe, expect, it } from 'vitest';
import { lidContactsDirty } from '../../../src/causes/plugs/lid-contacts-dirty.ts';
import { rearPlugOff } from '../../../src/causes/plugs/rear-plug-off.ts';
import { lidLeadBroken } from '../../../src/causes/runs/lid-lead-broken.ts';
import { speakerWireOpen } from '../../../src/causes/runs/speaker-wire-open.ts';
import { coilOpen } from '../../../src/causes/speakers/coil-open.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { figuresOf, ON_AMP, onBike } from '../on-bike.ts';

const ALONG_THE_RUN = [rearPlugOff, lidContactsDirty, lidLeadBroken, speakerWireOpen, coilOpen];

// 0.7 to 0.95 of the rated ohms cold, from memory; copper of 1.7241e-8 Ω m (IEC 60028).
describe('a rear run', () => {
  it.each(ALONG_THE_RUN)('$id: coil and wires of this bike', (cause) => {
    expect(figuresOf(cause, onBike(ON_AMP))).toMatchObject({
      'coil-cold': '2.8 to 3.8 Ω',
      'run-wires': '36 mΩ', // 2 × 2.2 m × 1.7241e-8 / 2.08e-6
    });
    // 2 × 2.8 m in the trunk.
    expect(figuresOf(cause, onBike(EXAMPLE_RIGS.trunk))).toMatchObject({
      'coil-cold': '1.4 to 1.9 Ω',
      'run-wires': '46 mΩ',
    });
    expect(figuresOf(cause, onBike({}))).toMatchObject({ 'coil-cold': '1.4 to 3.8 Ω' });
  });
  it('says of which rated ohms its coil figure is, and of which ones where nobody knows', () => {
    const label = (rig: Rig) => coilOpen.remedy(onBike(rig)).numbers.find(({ id }) => id === 'coil-cold')?.label;
    expect(label({ ...ON_AMP, rearRatedOhm: 4 })).toBe('One coil of 4 Ω, cold, without your leads');
    expect(label(EXAMPLE_RIGS.trunk)).toBe('One coil of 2 Ω, cold, without your leads');
    expect(label({})).toBe('One coil, of 2 to 4 Ω rated, cold, without your leads');
  });
  it('is shown as it was read, less the leads of the meter; an open one has no figure', () => {
    const read = { 'run-ohms': { leadsOhm: 0.3, leftOhm: 3.6, rightOhm: Infinity } };
    const figures = figuresOf(speakerWireOpen, onBike(ON_AMP, {}, read));
    expect(figures).toMatchObject({ 'run-leftOhm': '3.3 Ω' });
    expect(figures).not.toHaveProperty('run-rightOhm');
  });
});
