import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ampIn } from '../../src/steps/amplifier/amp-in.ts';
import { fedFromRear } from '../../src/steps/fitted/fed-from.ts';
import { leastReferenceV, nothingBelowV } from '../../src/steps/tools/ac-volts.ts';
import { senseLevel } from '../../src/steps/turn-on/sense-level.ts';
import { rearPair } from '../../src/steps/unit/rear-pair.ts';
import { expectClose } from '../compute/close.ts';
import { type Digit, judged, on, whyUnusable } from './situation.ts';

/*
 * Rear over front at centred fader is 0.7 to 1.4, under 0.02 is nothing: common practice, no published source. So is the
 * least signal for each kind of meter: one that shows 0.1 V needs 3 V at the front to tell nothing from a little.
 */
const FINE = on({}, '0.001');
const USUAL = on({}, '0.01');
const BASIC = on({}, '0.1');
const read = (frontV: number, leftV: number, rightV = leftV, s = FINE) =>
  judged(rearPair, { frontV, leftV, rightV }, s);

describe('the rear pairs next to the front pair', () => {
  it.each([
    [1.399, 'uneven'],
    [1.4, 'ok'],
    [1.401, 'ok'],
    [2.799, 'ok'],
    [2.8, 'uneven'],
    [2.801, 'uneven'],
  ])('%f V of 2 V is %s: level with the front is from 0.7 up to 1.4 times', (leftV, outcome) => {
    expect(read(2, leftV, 2)).toBe(outcome);
    expect(read(2, 2, leftV)).toBe(outcome);
  });
  it.each([
    [0.04, 'none'],
    [0.041, 'uneven'],
    [0.042, 'uneven'],
  ])('%f V of 2 V is %s: nothing ends at a fiftieth of the front and one digit of 0.001 V', (valueV, outcome) => {
    expect(read(2, valueV)).toBe(outcome);
  });
  it('is one-only when one side carries nothing, whatever the other does', () => {
    expect(read(2, 2, 0)).toBe('one-only');
    expect(read(2, 0, 0.5)).toBe('one-only');
    expect(read(2, 5, 0)).toBe('one-only');
  });
  it('is uneven when one side is level and the other is not', () => {
    expect(read(2, 2, 1)).toBe('uneven');
    expect(read(2, 2, 12)).toBe('uneven');
  });
  it.each([
    // Half as much again as the residue is still nothing: 0.075 V of 50 mV.
    [0.074, 'none'],
    [0.076, 'uneven'],
    [1.5, 'ok'],
  ])('takes %f V of 2 V as %s where 50 mV are there with the tone off', (valueV, outcome) => {
    expect(judged(rearPair, { residueV: 0.05, frontV: 2, leftV: valueV, rightV: valueV }, FINE)).toBe(outcome);
    // Nobody has to have read it: an old case has not.
    expect(read(2, 0.05)).toBe('uneven');
  });
  it('asks for more volume where the residue would hide the tone, and says how much', () => {
    // 0.4 V × 1.5 is more than 0.7 of 0.8 V, so 0.6 / 0.7 = 0.86 V are needed.
    const hidden = { residueV: 0.4, frontV: 0.8, leftV: 0.8, rightV: 0.8 };
    expect(whyUnusable(rearPair, hidden, FINE)).toEqual({
      reading: 'frontV',
      message: expect.stringContaining('at least 0.86 V'),
    });
    expect(whyUnusable(rearPair, { ...hidden, frontV: 0.86 }, FINE)).toBeNull();
  });
  it('is told to the readings further on: what the head unit leaves on its wires is no signal there either', () => {
    const facts = { 'rear-pair': { readings: { residueV: '0.05', frontV: '2', leftV: '0', rightV: '0' } } };
    const arriving = { sentV: 2, leftV: 0.07, rightV: 0.07 };
    expect(judged(ampIn, arriving, on({}, '0.001', facts))).toBe('none');
    expect(judged(ampIn, arriving, FINE)).toBe('low');
    expect(judged(senseLevel, { usualV: 0.05, loudV: 0.07 }, on({}, '0.001', facts))).toBe('none');
    expect(judged(senseLevel, { usualV: 0.05, loudV: 0.07 }, FINE)).not.toBe('none');
  });
  it('judges ratios only: the same at every volume', () => {
    for (const frontV of [0.5, 1, 2, 4, 8]) {
      expect(read(frontV, frontV)).toBe('ok');
      expect(read(frontV, frontV / 2)).toBe('uneven');
      expect(read(frontV, 0)).toBe('none');
    }
  });
  it('says the healthy volts of the front reading just typed', () => {
    expect(rearPair.healthy({ frontV: 3 }, USUAL)).toBe('Healthy is 2.1 to 4.2 V: the front reading times 0.7 to 1.4.');
    expect(rearPair.healthy({}, USUAL)).toBe('Healthy is 0.7 to 1.4 of what the front pair reads.');
  });
  it('shows no scale before the front reading is there, and none for the front itself', () => {
    expect(rearPair.bands('leftV', {}, USUAL)).toBeNull();
    expect(rearPair.bands('frontV', { frontV: 3 }, USUAL)).toBeNull();
    expect(rearPair.bands('leftV', { frontV: 3 }, USUAL)).not.toBeNull();
  });
  it('tells where to probe when the plug is out of reach: signal wires with an amplifier, any rear plug without', () => {
    const how = (rig: Rig) => (typeof rearPair.how === 'function' ? rearPair.how(on(rig)) : rearPair.how).at(-1);
    expect(how(EXAMPLE_RIGS['frame-fairing'])).toMatch(/signal wires on the way to the amplifier/);
    expect(how({ rearFedBy: 'unit' })).toMatch(/any rear plug on the way, on the side towards the head unit/);
  });
});

describe('a meter that is too coarse for the signal', () => {
  it.each([
    ['0.001', 0.2],
    ['0.01', 0.5],
    ['0.1', 3],
  ] as const)('that shows %s V needs %f V at the front pair', (digit: Digit, leastV) => {
    const s = on({}, digit);
    expect(leastReferenceV(s)).toBe(leastV);
    expect(read(leastV, 0, 0, s)).toBe('none');
    expect(read(leastV + 0.1, 0, 0, s)).toBe('none');
    expect(read(leastV - 0.001, 0, 0, s)).toBeUndefined();
  });
  it('asks for more volume and names both numbers', () => {
    expect(whyUnusable(rearPair, { frontV: 2.9, leftV: 0, rightV: 0 }, BASIC)).toEqual({
      reading: 'frontV',
      message:
        'Too little for a meter that reads down to 0.1 V. Turn the volume up until this reads 3.6 V or more, then take all readings again.',
    });
    expect(whyUnusable(rearPair, { frontV: 3, leftV: 0, rightV: 0 }, BASIC)).toBeNull();
  });
  it('counts its own last digit as nothing, and no more: 0.1 V of 3 V is silence, 0.2 V is a little', () => {
    expectClose(nothingBelowV(3, BASIC), 0.16);
    expect(read(3, 0.1, 0.1, BASIC)).toBe('none');
    expect(read(3, 0.2, 0.2, BASIC)).toBe('uneven');
  });
  it('is taken as a basic one while nobody has said, or nobody could', () => {
    for (const facts of [{}, { 'meter-digit': { cannot: true } as const }, { 'meter-digit': { option: '5' } }]) {
      expect(leastReferenceV({ rig: {}, facts })).toBe(3);
    }
  });
  it('shows no scale over a front reading that cannot be used', () => {
    expect(rearPair.bands('leftV', { frontV: 0.1 }, BASIC)).toBeNull();
    expect(rearPair.bands('leftV', { frontV: 2.9 }, BASIC)).toBeNull();
    expect(rearPair.bands('leftV', { frontV: 3 }, BASIC)).not.toBeNull();
  });
});

describe('fedFromRear', () => {
  it('is so unless the rear amplifier is known to take everything from the front pair', () => {
    expect(fedFromRear(on({}))).toBe(true);
    expect(fedFromRear(on({ amps: [{ drives: 'both' }] }))).toBe(true);
    expect(fedFromRear(on({ amps: [{ drives: 'both', fedFrom: 'own' }] }))).toBe(true);
    expect(fedFromRear(on({ amps: [{ drives: 'both', fedFrom: 'front' }] }))).toBe(false);
    expect(fedFromRear(on({ amps: [{ drives: 'front', fedFrom: 'front' }, { drives: 'rear' }] }))).toBe(true);
  });
});
