import { describe, expect, it } from 'vitest';
import { ampInputPlugOff } from '../../../src/causes/amp-input/amp-input-plug-off.ts';
import { signalLeadOpen } from '../../../src/causes/amp-input/signal-lead-open.ts';
import { titleOf } from '../../../src/causes/cause.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { AmpValues } from '../../../src/rig/fields.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { figuresOf, ON_AMP, onBike } from '../on-bike.ts';

const withAmp = (amp: Partial<AmpValues>): Rig => ({ ...ON_AMP, amps: [{ ...ON_AMP.amps[0], ...amp }] });

// All of it common practice, no published source; the volts that wake an amplifier are from memory.
describe('what arrives at an amplifier', () => {
  it('is 0.85 to 1.15 of what leaves the head unit over speaker wires', () => {
    expect(figuresOf(ampInputPlugOff, onBike(ON_AMP))).toEqual({ 'arrives-healthy': '85 to 115 %' });
  });
  it('is only alike on both sides behind a converter', () => {
    const line = onBike(withAmp({ input: 'line' }));
    expect(figuresOf(ampInputPlugOff, line)).toEqual({ 'sides-apart': 'at most 10 %' });
    expect(ampInputPlugOff.remedy(line).proofOfCure.byMeter).toMatch(/within 10 %/);
  });
  it('wakes one that listens, by sound or by DC, and that is the proof of the cure', () => {
    const bySound = onBike(EXAMPLE_RIGS.trunk);
    expect(figuresOf(ampInputPlugOff, bySound)).toMatchObject({ 'wakes-by-sound': '0.050 to 1.0 V' });
    expect(figuresOf(ampInputPlugOff, onBike(withAmp({ turnOn: 'dc' })))).toMatchObject({ 'wakes-by-dc': '3 to 5 V' });
    expect(ampInputPlugOff.remedy(bySound).proofOfCure.byEar).toMatch(/wakes within 3 seconds/);
    expect(ampInputPlugOff.remedy(onBike(ON_AMP)).proofOfCure.byEar).not.toMatch(/wakes/);
  });
});

describe('one wire of an input pair that is open', () => {
  const read = { 'amp-in': { sentV: 2, leftV: 2, rightV: 0.9 } };
  it('has its side in title and repair where the readings tell it', () => {
    const findings = onBike(ON_AMP, {}, read);
    expect(titleOf(signalLeadOpen, findings)).toBe('One wire of the rear right input open');
    expect(signalLeadOpen.remedy(findings).repair).toEqual([{ do: 'renew-wire', wire: 'signal', where: 'rear-right' }]);
    expect(titleOf(signalLeadOpen, onBike(ON_AMP))).toBe('Signal lead to the amplifier open');
  });
  it('is remade for all that it carries where no side stands out: an amplifier may drive the front', () => {
    for (const drives of ['front', 'both'] as const)
      expect(signalLeadOpen.remedy(onBike(withAmp({ drives }))).repair).toEqual([
        { do: 'renew-wire', wire: 'signal', where: 'all' },
      ]);
  });
  it('is checked by the DC on both wires, and not on a line-level lead, which has none', () => {
    const line = onBike(withAmp({ input: 'line' }));
    expect(figuresOf(signalLeadOpen, onBike(ON_AMP))).toMatchObject({ 'half-supply-healthy': '5.0 to 6.9 V' });
    expect(figuresOf(signalLeadOpen, line)).not.toHaveProperty('half-supply-healthy');
    expect(signalLeadOpen.remedy(line).proofOfCure.byMeter).not.toMatch(/battery negative/);
  });
});
