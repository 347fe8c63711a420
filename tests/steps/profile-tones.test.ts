import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { cleanOffV, referenceToneV } from '../../src/steps/profile/tones.ts';
import { tonesOff } from '../../src/steps/profile/tones-off.ts';
import { tonesRunning } from '../../src/steps/profile/tones-running.ts';
import { topStep } from '../../src/steps/profile/top-step.ts';
import { expectClose } from '../compute/close.ts';
import { type Digit, judged, on, type Readings, whyUnusable } from './situation.ts';

/*
 * Bands of the tone ratio, the limit of the 80 Hz tone, and what counts as the same with the engine running: common
 * practice, no published source. 12, 13 and 14 dB are voltage ratios of 3.98, 4.47 and 5.01 (definition of the decibel).
 */
const BIKE: Rig = EXAMPLE_RIGS['frame-fairing'];
const tones = (v400V: number, v80V: number, digit: Digit = '0.001', rig = BIKE) =>
  judged(tonesOff, { v400V, v80V }, on(rig, digit));
const times = (gainDb: number) => 10 ** (gainDb / 20);

describe('80 Hz over 400 Hz, engine off', () => {
  it.each([12, 13, 14])('is boosted for the %i dB of an unaltered profile, on every kind of meter', (gainDb) => {
    expect(tones(0.5, Number((0.5 * times(gainDb)).toFixed(3)), '0.001')).toBe('boosted');
    expect(tones(0.5, Number((0.5 * times(gainDb)).toFixed(2)), '0.01')).toBe('boosted');
    expect(tones(1.1, Number((1.1 * times(gainDb)).toFixed(1)), '0.1')).toBe('boosted');
  });
  it('is flat for equal volts, on every kind of meter', () => {
    expect(tones(0.5, 0.5, '0.001')).toBe('flat');
    expect(tones(0.5, 0.48, '0.01')).toBe('flat');
    expect(tones(1.1, 1.1, '0.1')).toBe('flat');
  });
  it('is cut when somebody turned the bass down', () => expect(tones(0.5, 0.2)).toBe('cut'));
  it.each([
    [0.299, 'cut'],
    [0.301, 'unclear'],
    [0.349, 'unclear'],
    [0.35, 'flat'],
    [0.699, 'flat'],
    [0.701, 'unclear'],
    [1.249, 'unclear'],
    [1.25, 'boosted'],
    [1.251, 'boosted'],
  ])('%f V over 0.5 V is %s: cut up to 0.6, flat from 0.7 to 1.4, boosted from 2.5', (v80V, outcome) => {
    expect(tones(0.5, v80V)).toBe(outcome);
  });
  it('is unclear when the digits of a basic meter leave both answers possible', () => {
    expect(tones(0.7, 0.7, '0.1')).toBe('unclear');
    expect(tones(0.7, 0.7, '0.001')).toBe('flat');
    expect(tones(1.1, 0.5, '0.1')).toBe('cut');
    expect(tones(1.1, 0.6, '0.1')).toBe('cut');
    expect(tones(0.7, 0.4, '0.1')).toBe('unclear');
  });
  it('says the volts of this reading', () => {
    expect(tonesOff.healthy({ v400V: 0.5 }, on(BIKE))).toBe('Flat is 0.35 to 0.70 V at 80 Hz, boosted is above 1.3 V.');
    expect(tonesOff.healthy({}, on(BIKE))).toMatch(/0\.7 to 1\.4 times .* 2\.5 times or more/);
  });
});

describe('the level at which the two tones are taken', () => {
  it('is about 0.5 V, and 1.1 V for a basic meter, and the rider is told so', () => {
    expect(referenceToneV(on(BIKE, '0.001'))).toBe(0.5);
    expect(referenceToneV(on(BIKE, '0.01'))).toBe(0.5);
    expect(referenceToneV(on(BIKE, '0.1'))).toBe(1.1);
    expect(JSON.stringify(typeof tonesOff.how === 'function' && tonesOff.how(on(BIKE, '0.1')))).toMatch(/about 1\.1 V/);
  });
  it.each([
    ['0.001', 0.3, 0.299],
    ['0.1', 0.66, 0.6],
  ] as const)('with a meter that shows %s V is usable at %f V and too little at %f V', (digit, enough, little) => {
    expect(tones(enough, enough, digit)).not.toBeUndefined();
    expect(tones(little, little, digit)).toBeUndefined();
    expect(whyUnusable(tonesOff, { v400V: little, v80V: little }, on(BIKE, digit))?.reading).toBe('v400V');
  });
  it.each([
    // Half, or with a basic meter 0.8, of (12.6 − 2.2) / √2 = 7.354 V, where a boost begins to hide in clipping.
    ['0.01', 3.67, 3.69, '3.7 V'],
    ['0.1', 5.8, 5.9, '5.9 V'],
  ] as const)('with a meter that shows %s V may reach %f V at 80 Hz and not %f V', (digit, most, over, limit) => {
    const v400V = Number((most / 2).toFixed(2));
    expect(tones(v400V, most, digit)).toBe('unclear');
    expect(tones(v400V, over, digit)).toBeUndefined();
    const why = whyUnusable(tonesOff, { v400V, v80V: over }, on(BIKE, digit));
    expect(why?.reading).toBe('v80V');
    expect(why?.message).toContain(`above ${limit} clipping hides a boost`);
  });
  // Clipping takes from the louder tone only, so the true ratio is at least the one that is read.
  it.each([
    ['0.01', 0.9, 3.9],
    ['0.001', 1.1, 7.1],
    ['0.1', 1.1, 7.3],
  ] as const)(
    'past that limit still shows a boost, which clipping can only shrink: %s V, %f and %f V',
    (digit, v400V, v80V) => {
      expect(tones(v400V, v80V, digit)).toBe('boosted');
    },
  );
  it('is asked for once more at 3 V where a basic meter reads both alike, so that its digit tells less', () => {
    const how = typeof tonesOff.how === 'function' ? tonesOff.how(on(BIKE, '0.1')).join(' ') : '';
    expect(how).toMatch(/about the same as 400 Hz\? Turn up until 400 Hz reads about 3 V/);
    expect(tonesOff.how instanceof Function && tonesOff.how(on(BIKE, '0.01')).join(' ')).not.toMatch(/about 3 V/);
  });
  it('is taken with the quiet tones, 15 dB down, which leave room for 14 dB of boost before the volume', () => {
    expect(tonesOff.tones?.slice(0, 2)).toEqual(['quiet-400hz', 'quiet-80hz']);
    expect(tonesRunning.tones).toEqual(tonesOff.tones);
  });
  it('leaves room for the whole boost below that limit at the level it asks for', () => {
    for (const digit of ['0.001', '0.01', '0.1'] as const) {
      const v400V = referenceToneV(on(BIKE, digit));
      expect(tones(v400V, Number((v400V * times(14)).toFixed(1)), digit)).toBe('boosted');
    }
  });
});

describe('the tones with the engine running', () => {
  const OFF = { v400V: '0.50', v80V: '2.20', v1000V: '0.45', v4000V: '0.40' };
  const BASIC_OFF = { v400V: '1.1', v80V: '5.0' };
  const running = (readings: Readings, off: Readonly<Record<string, string>> = OFF, digit: Digit = '0.001') =>
    judged(tonesRunning, readings, on(BIKE, digit, { 'tones-off': { readings: off } }));

  it('are the same when the volume stands a little elsewhere, which moves all tones alike', () => {
    expect(running({ v400V: 0.565, v80V: 2.486 })).toBe('same');
    expect(running({ v400V: 0.565, v80V: 2.486, v1000V: 0.509, v4000V: 0.452 })).toBe('same');
  });
  it.each([
    [1.84, 'same'],
    [1.83, 'changes'],
    [2.63, 'same'],
    [2.65, 'changes'],
  ])('%f V at 80 Hz is %s: a fifth more or less of 2.20 V', (v80V, outcome) => {
    expect(running({ v400V: 0.5, v80V })).toBe(outcome);
  });
  it('change when only the treble moves', () => {
    expect(running({ v400V: 0.5, v80V: 2.2, v4000V: 0.8 })).toBe('changes');
    expect(running({ v400V: 0.5, v80V: 2.2, v1000V: 0.3 })).toBe('changes');
  });
  it('change by 3 dB even on a basic meter, and are the same there within its digits', () => {
    expect(running({ v400V: 1.1, v80V: 3.5 }, BASIC_OFF, '0.1')).toBe('changes');
    expect(running({ v400V: 1.2, v80V: 5.5 }, BASIC_OFF, '0.1')).toBe('same');
  });
  it('are unclear when the digits leave a change as possible as none', () => {
    expect(running({ v400V: 0.7, v80V: 0.9 }, { v400V: '0.7', v80V: '0.7' }, '0.1')).toBe('unclear');
  });
  it('are unclear when a tone is lost in the last digit, on either side', () => {
    expect(running({ v400V: 0.5, v80V: 0 }, OFF)).toBe('unclear');
    expect(running({ v400V: 0.5, v80V: 2.2 }, { v400V: '0.5', v80V: '0' })).toBe('unclear');
  });
  it('are not the same because the treble is, when the bass is gone altogether', () => {
    expect(running({ v400V: 0.5, v80V: 0, v1000V: 0.45 })).toBe('unclear');
    expect(running({ v400V: 0.5, v80V: 2.2, v4000V: 0 })).toBe('unclear');
  });
  it('may be the same where a meter shows nothing of the treble either time', () => {
    expect(running({ v400V: 0.5, v80V: 2.2, v4000V: 0 }, { ...OFF, v4000V: '0' })).toBe('same');
  });
  it('are unclear without the tones of the engine off to compare with', () => {
    expect(judged(tonesRunning, { v400V: 0.5, v80V: 2.2 }, on(BIKE))).toBe('unclear');
    expect(tonesRunning.bands('v80V', { v400V: 0.5 }, on(BIKE))).toBeNull();
  });
  it('say where the same lies on this bike', () => {
    const s = on(BIKE, '0.01', { 'tones-off': { readings: OFF } });
    expect(tonesRunning.healthy({}, s)).toBe('The same means within 20 % of the engine-off ratio.');
    expect(tonesRunning.healthy({ v400V: 0.5 }, s)).toBe(
      'The same means within 20 % of the engine-off ratio: 1.8 to 2.6 V at 80 Hz.',
    );
  });
});

/*
 * Full level: (12.6 V − 2.2 V) / √2 = 7.35 V into a speaker, 0.8 V of loss into an input: 8.34 V. A lowered profile is not
 * limited by the supply: 7 dB under (14.2 V − 2.2 V) / √2 = 8.49 V is 3.79 V. Losses and 7 dB are from memory.
 */
describe('the loudest clean step', () => {
  const read = (topV: number, rig = BIKE) => judged(topStep, { topV }, on(rig));
  it('is full at 7.35 V into speakers and at 8.34 V into an amplifier', () => {
    const { lowV, highV } = cleanOffV(on(BIKE));
    expectClose(lowV, 7.35, 1e-3);
    expectClose(highV, 8.34, 1e-3);
    expect(read(7.35)).toBe('full');
    expect(read(8.34)).toBe('full');
  });
  it('is lowered at 3.79 V, 7 dB under the 8.49 V of a running engine', () => {
    expectClose(8.49 * times(-7), 3.79, 1e-3);
    expect(read(3.79)).toBe('lowered');
    expect(read(3.28)).toBe('lowered');
  });
  it.each([
    [4.77, 'lowered'],
    [4.79, 'unclear'],
    [5.51, 'unclear'],
    [5.52, 'full'],
    [8.75, 'full'],
    [8.77, 'unclear'],
    [16, 'unclear'],
  ])('%f V is %s: lowered up to 0.65, full from 0.75 of the clean output', (topV, outcome) => {
    expect(read(topV)).toBe(outcome);
  });
  it('allows for every usual battery when nobody knows the supply', () => {
    const { lowV, highV } = cleanOffV(on({}));
    expectClose(lowV, 10 / Math.SQRT2);
    expectClose(highV, 12.1 / Math.SQRT2);
    expect(read(3.79, {})).toBe('lowered');
    expect(read(6.9, {})).toBe('full');
  });
  it('says both limits with the numbers of this bike', () => {
    expect(topStep.healthy({}, on(BIKE))).toBe(
      'Full level is 5.5 to 8.8 V with the engine off. A lowered one ends at about 3.8 V.',
    );
    // 6 to 8 dB under 8.49 V.
    expect(topStep.healthy({}, on({}))).toMatch(/A lowered one ends at 3\.4 to 4\.3 V\./);
  });
  it('is refused below what was read on this head unit before', () => {
    const having = (step: string, readings: Readonly<Record<string, string>>) =>
      on(BIKE, '0.01', { [step]: { readings } });
    const s = having('tones-off', { v400V: '0.50', v80V: '2.20' });
    expect(judged(topStep, { topV: 0.2 }, s)).toBeUndefined();
    expect(judged(topStep, { topV: 0 }, s)).toBeUndefined();
    expect(whyUnusable(topStep, { topV: 0.2 }, s)?.message).toMatch(/^You have read 2\.2 V on this head unit before/);
    expect(judged(topStep, { topV: 2.2 }, s)).toBe('lowered');
    expect(
      judged(topStep, { topV: 3 }, having('rear-pair', { frontV: '3.6', leftV: '3.5', rightV: '0' })),
    ).toBeUndefined();
    expect(judged(topStep, { topV: 7.3 }, having('tones-running', { v400V: '1.1', v80V: '9.9' }))).toBe('full');
  });
});
