import { describe, expect, it } from 'vitest';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { readingBehind } from '../../src/plan/read-values.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { type Findings, findingsOver } from '../../src/steps/outcome.ts';
import { tonesOff } from '../../src/steps/profile/tones-off.ts';
import { tonesRunning } from '../../src/steps/profile/tones-running.ts';
import { topStep } from '../../src/steps/profile/top-step.ts';
import type { Facts, Step } from '../../src/steps/step.ts';
import { metersDigit } from '../../src/steps/tools/meter-digit.ts';
import { rearPair } from '../../src/steps/unit/rear-pair.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { STORED, withStored } from '../../src/world/stored-profiles.ts';
import { ridden } from '../../src/world/symptoms/index.ts';
import { ride } from '../case/ride.ts';
import type { Answers } from '../journey.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';
import { type Digit, judged, on, whyUnusable } from '../steps/situation.ts';
import { measured, noAmp, walk } from './routes.ts';

/*
 * The stored profile read with a meter from a toolbox: three digits, 200 V or 2 V on its lowest AC range, off by 1.2 to 2 %
 * and some digits, good to 400 Hz. What such meters are: from memory, common practice, no published source.
 */

const BIKE: Rig = EXAMPLE_RIGS['fork-fairing'];
const AMP: Rig = EXAMPLE_RIGS['frame-fairing'];
const METER: Answers = { 'tools-at-hand': 'meter', 'meter-digit': '0.01' };
const UNALTERED: Answers = { 'tones-off': { v400V: '0.50', v80V: '2.24' } };
const REAR_OFF: Answers = { 'rear-pair': { frontV: '2.00', leftV: '0', rightV: '0' } };
const NOT_RUNNING: Answers = { 'tones-running': null };
const read = (answers: Answers, rig = BIKE) => ride(whatIsInTheHeadUnit, rig, { ...METER, ...answers });
const lines = (step: Step, s: Findings | ReturnType<typeof on>): string => {
  const { how, phone } = step as unknown as {
    how: readonly string[] | ((s: unknown) => readonly string[]);
    phone: string | ((s: unknown) => string);
  };
  return [...(typeof how === 'function' ? how(s) : how), typeof phone === 'function' ? phone(s) : phone].join(' ');
};

describe('a reading near the limit', () => {
  it('is taken where clipping can only shrink the ratio: 3.9 V at 80 Hz over 0.9 V is a boost', () => {
    // (12.6 − 2.2) / √2 / 2 = 3.68 V is the limit of a meter that shows 0.01 V; 3.9 / 0.9 = 4.3.
    const { numbers } = read({
      'tones-off': { v400V: '0.90', v80V: '3.90' },
      ...REAR_OFF,
      'top-step': null,
      ...NOT_RUNNING,
    });
    expect(numbers[0]).toMatch(/^Bass boost · 80 Hz over 400 Hz is 4\.3 times.*: bass boost in$/);
  });
  it('is refused where clipping may hide a boost, with the volts that are allowed', () => {
    expect(whyUnusable(tonesOff, { v400V: 2, v80V: 3.9 }, on(AMP, '0.01'))?.message).toMatch(
      /above 3\.7 V clipping hides a boost/,
    );
  });
});

describe('the loudest step', () => {
  const having = (volts: string) => on(AMP, '0.01', { 'tones-off': { readings: { v400V: '0.50', v80V: volts } } });
  it('is refused below what was read before, in the volts that were read', () => {
    for (const topV of [0, 0.2, 1.9]) expect(judged(topStep, { topV }, having('2.20'))).toBeUndefined();
    expect(whyUnusable(topStep, { topV: 0.2 }, having('2.20'))?.message).toMatch(/You have read 2\.2 V/);
  });
  it('may read what was read before within what a meter repeats, 5 % and two digits', () => {
    expect(judged(topStep, { topV: 2.1 }, having('2.20'))).toBe('lowered');
  });
  it('is followed by a level in volts, not by a step of the volume that nobody knows any more', () => {
    const s = on(AMP, '0.01', { 'tones-off': { readings: { v400V: '0.52', v80V: '2.20' } } });
    const text = lines(tonesRunning as unknown as Step, s);
    expect(text).toMatch(/400 Hz back to about 0\.52 V: the volume number may be different now/);
    expect(text).not.toMatch(/same (volume )?step|volume step from before/i);
    expect(lines(topStep as unknown as Step, s)).toMatch(/Then turn the volume straight back down/);
  });
  it('has the front pair set in volts for the rear pairs as well', () => {
    expect(lines(rearPair as unknown as Step, on(AMP, '0.01'))).toMatch(/\d V/);
  });
});

describe('one rear pair that is dead', () => {
  const one = { 'rear-pair': { frontV: '2.00', leftV: '1.95', rightV: '0' } };
  it('is said by the reading, and is not proof that the rear is all right', () => {
    const { remedy, numbers } = read({
      ...UNALTERED,
      ...one,
      'top-step': { topV: '7.30' },
      'tones-running': { v400V: '0.56', v80V: '3.50' },
    });
    expect(remedy.fix[0]).toMatch(/^One rear pair gives nothing while the other does/);
    expect(numbers[1]).toMatch(/left 1\.0, right nothing/);
  });
  it('is said by the plan, too', () => {
    const { remedy, verdict } = walk({
      'planned-change': 'rear-on-unit',
      ...noAmp,
      'delivered-with': 'two',
      ...measured,
      'tones-off': 'boosted',
      'rear-pair': 'one-only',
    });
    expect(verdict).toBe('plan-stay');
    expect(remedy.fix[0]).toMatch(/^One rear pair gives nothing while the other does: a fault of that pair/);
  });
});

describe('a reading that is unclear', () => {
  const unclear: Answers = {
    'tones-off': { v400V: '0.50', v80V: '0.95' },
    ...REAR_OFF,
    'top-step': null,
    ...NOT_RUNNING,
  };
  it('is called read and unclear, what was not done is called not read', () => {
    const { numbers, remedy } = read(unclear);
    expect(numbers).toEqual([
      expect.stringMatching(/^Bass boost · .*: read, unclear$/),
      expect.stringMatching(/: rear channels off$/),
      expect.stringMatching(/^EQ with the engine: not read$/),
      expect.stringMatching(/^Level: not read$/),
    ]);
    expect(remedy.howSure).toMatch(/^Read, but unclear: Bass boost\. Not read: /);
  });
  it('is unclear on the paper for the counter, not left out', () => {
    expect(read(unclear).remedy.sheet?.parts[0]?.lines.join()).toMatch(/80 Hz over 400 Hz is 1\.9 times.*: unclear\./);
  });
  it('is not the same as “cut”, which is a bass control', () => {
    const cut = read({ 'tones-off': { v400V: '0.50', v80V: '0.20' }, ...REAR_OFF, 'top-step': null, ...NOT_RUNNING });
    expect(cut.numbers[0]).toMatch(/0\.4 times.*: read, unclear$/);
  });
});

describe('readings that contradict each other', () => {
  const both: Answers = {
    ...UNALTERED,
    'rear-pair': { frontV: '2.00', leftV: '1.95', rightV: '1.95' },
    'top-step': { topV: '3.30' },
    ...NOT_RUNNING,
  };
  it('are asked for once more, the likelier slip first, before anything is concluded', () => {
    const { remedy } = read({ ...both, 'again top-step': { topV: '7.20' } });
    expect(remedy.what).toContain('rear-on');
  });
  it('are named together where they stay', () => {
    const { remedy } = read({ ...both, 'again top-step': 'same', 'again tones-off': 'same' });
    expect(remedy.what).toMatch(/No stored profile does all of this/);
    expect(remedy.howSure).toMatch(/lowered level and the bass boost/);
  });
});

describe('a meter that rectifies one half of the wave and lets DC through', () => {
  it('is found out on a resting battery, tried both ways round: 2.2 times its volts, or nothing', () => {
    // π / √2 = 2.221 times for such a meter; a resting battery has 12.2 to 12.7 V: 27 to 28 V.
    expect((12.4 * Math.PI) / Math.SQRT2).toBeCloseTo(27.5, 1);
    const text = lines(metersDigit as unknown as Step, on({}));
    expect(text).toMatch(/key off, both probes on the battery: it must read 0\. Swap the probes: 0 again/);
    expect(text).toMatch(/about 27 V, even one way round only/);
    expect(metersDigit.phone).toMatch(/then the probes swapped: about 27, either time\? Then .* use another meter/);
  });
});

describe('no false precision', () => {
  const findings = (facts: Facts, rig: Rig = BIKE): Findings => findingsOver(whatIsInTheHeadUnit.steps)({ rig, facts });
  const tones = (digit: Digit, v400V: string, v80V: string, running?: readonly [string, string]): Facts => ({
    'meter-digit': { option: digit },
    'tones-off': { readings: { v400V, v80V } },
    ...(running && { 'tones-running': { readings: { v400V: running[0], v80V: running[1] } } }),
  });
  it.each([
    ['0.1', '1.1', '4.9'],
    ['0.01', '0.50', '2.24'],
    ['0.001', '0.500', '2.240'],
  ] as const)('a ratio stands with what a meter of %s V leaves possible, no finer than that', (digit, v400V, v80V) => {
    const said = readingBehind('boosted', findings(tones(digit, v400V, v80V)));
    const [, at, low, high] = /is ([\d.]+) times, ([\d.]+) to ([\d.]+) possible/.exec(said) ?? [];
    expect(Number(low)).toBeLessThan(Number(at));
    expect(Number(high)).toBeGreaterThan(Number(at));
    expect(String(at).replace(/^.*\./, '').length).toBeLessThanOrEqual(1);
  });
  it('a basic meter at its last digits gives whole numbers only', () => {
    expect(readingBehind('boosted', findings(tones('0.1', '0.7', '3.0')))).toMatch(/is \d times, \d to \d+ possible$/);
  });
  it('a shift with the engine never stands with a band of nothing, “0.37 to 0.37”', () => {
    const said = readingBehind('sameEq', findings(tones('0.001', '0.500', '2.240', ['0.500', '0.829'])));
    expect(said).toMatch(/^with the engine that ratio is 0\.4 times what it was$/);
    expect(said).not.toMatch(/0\.37/);
  });
});

describe('the supply', () => {
  const BIKES = Object.values(TWENTY_RIGS).filter((_, i) => i % 4 === 0);
  it('has no say below clipping: a tone reads the same with the engine off and running', () => {
    for (const rig of BIKES)
      for (const stored of STORED) {
        const bike = ridden(withStored(healthyWorld(rig), stored));
        const at = (engine: 'off' | 'idle') =>
          bike.at({ toneHz: 400, volumeRatio: 0.1, engine }).heard?.['front-left'].powerW ?? 0;
        if (at('off') > 0) expect(at('idle') / at('off')).toBeCloseTo(1, 1);
      }
  });
  it('is said to raise nothing but the limit', () => {
    const text = [tonesOff, tonesRunning, topStep, rearPair]
      .map((step) => `${lines(step as unknown as Step, on(AMP))} ${step.why}`)
      .join(' ');
    expect(text).not.toMatch(
      /(louder|higher|more|rises?|goes up).{0,30}(engine|supply)|(engine|supply).{0,30}(louder|rises|goes up)/i,
    );
  });
});

describe('the tones', () => {
  it('for ratios are a pair 15 dB down, so that EQ before the volume has room for its whole boost', () => {
    expect(tonesOff.tones?.slice(0, 2)).toEqual(['quiet-400hz', 'quiet-80hz']);
    expect(lines(tonesOff as unknown as Step, on(AMP, '0.01'))).toMatch(
      /quiet tones first: with a bass boost the loud ones may clip at any volume/,
    );
    // 10^((14 − 15) / 20) = 0.89 of full scale (definition of the decibel).
    expect(10 ** ((14 - 15) / 20)).toBeLessThan(1);
  });
  it('may be the loud ones where a lowered output does not come up with the quiet ones, and then both of them', () => {
    expect(lines(tonesOff as unknown as Step, on(AMP, '0.01'))).toMatch(/Then use the loud ones for both/);
  });
});

describe('a meter that reads 400 Hz low by 40 %', () => {
  it('makes no boost of equal tones: 1 / 0.6 is 1.7, unclear, and the level is read instead', () => {
    expect(judged(tonesOff, { v400V: 0.5, v80V: 0.83 }, on(BIKE, '0.01'))).toBe('unclear');
    const { asked, verdict } = walk({
      'planned-change': 'louder',
      ...noAmp,
      'rear-build': 'none',
      ...measured,
      'tones-off': 'unclear',
      'top-step': 'full',
    });
    expect(asked.slice(-2)).toEqual(['tones-off', 'top-step']);
    expect(verdict).toBe('plan-stay');
  });
  it('hides no boost either: 4 / 0.6 is 6.7', () => {
    expect(judged(tonesOff, { v400V: 0.3, v80V: 2 }, on(BIKE, '0.01'))).toBe('boosted');
  });
});
