import { describe, expect, it } from 'vitest';
import { ampInputTooLow } from '../../../src/causes/amp-input/amp-input-too-low.ts';
import { converterDead } from '../../../src/causes/amp-input/converter-dead.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { expectClose } from '../../compute/close.ts';
import { figuresOf, ON_AMP, onBike } from '../on-bike.ts';

const gainOf = (rig: Rig) => ampInputTooLow.remedy(onBike(rig)).repair.find((action) => action.do === 'set-gain');
const fixOf = (rig: Rig) => ampInputTooLow.remedy(onBike(rig)).fix.join(' ');
const onLine: Rig = { ...ON_AMP, amps: [{ ...ON_AMP.amps[0], input: 'line' }] };

// √(P Z), Joule's law; that a gain is set to 75 of 90 W is common practice, no published source. Worked by hand.
describe('the gain of an amplifier', () => {
  it('is set to √(75 W × 4 Ω) = 17.3 V where it clips at √(90 W × 4 Ω) = 19 V', () => {
    expectClose(gainOf(ON_AMP)?.outputV ?? 0, Math.sqrt(300));
    expect(figuresOf(ampInputTooLow, onBike(ON_AMP))).toMatchObject({ 'gain-output': '17.3 V', 'clips-at': '19 V' });
  });
  it('makes 17.3 V of (14.2 − 0.8) / √2 = 9.48 V, and of 8.49 V · 10^(−7 / 20) = 3.79 V', () => {
    expect(figuresOf(ampInputTooLow, onBike(ON_AMP))).toMatchObject({
      'output-per-volt-full': '1.8 V',
      'output-per-volt-lowered': '4.6 V',
    });
  });
  it('is that of the amplifier in question: √(125 W × 2 Ω) = 15.8 V for the rear one of the trunk', () => {
    expectClose(gainOf(EXAMPLE_RIGS.trunk)?.outputV ?? 0, Math.sqrt(250));
    expect(gainOf(EXAMPLE_RIGS.trunk)?.axle).toBe('rear');
    expect(gainOf(ON_AMP)?.axle).toBe('both');
  });
  it('is read off its papers first where nobody knows its watts', () => {
    expect(fixOf({})).toMatch(/^Look up the watts and ohms of one channel in its papers/);
    expect(fixOf(ON_AMP)).not.toMatch(/papers/);
  });
  it('has volts to set and no ratio on a line-level lead: what the converter makes is its own affair', () => {
    expect(Object.keys(figuresOf(ampInputTooLow, onBike(onLine)))).toEqual(['gain-output', 'clips-at']);
    expect(fixOf(onLine)).not.toMatch(/400 Hz/);
    expect(figuresOf(converterDead, onBike({}))).not.toHaveProperty('output-per-volt-full');
  });
});

describe('a dead converter', () => {
  it('is followed by one that takes the whole output of the head unit, and a gain that fits it', () => {
    const { repair, ifDoneAnyway } = converterDead.remedy(onBike(onLine));
    expect(figuresOf(converterDead, onBike(onLine))).toMatchObject({ 'converter-takes': '9.5 V' });
    expect(repair.map((action) => action.do)).toEqual(['replace-converter', 'set-gain']);
    expect(ifDoneAnyway).toMatch(/grounded negative/);
  });
});
