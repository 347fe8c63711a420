import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../src/compute/quantity.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ampDc } from '../../src/steps/amplifier/amp-dc.ts';
import { ampPair, theAmp } from '../../src/steps/fitted/the-amp.ts';
import { whichAmp } from '../../src/steps/fitted/which-amp.ts';
import { valuesIn } from '../../src/steps/outcome.ts';
import { ampRuns } from '../../src/steps/runs/amp-runs.ts';
import { ampWiresToFrame } from '../../src/steps/runs/amp-wires-to-frame.ts';
import { type Band, bandOf, type ReadingStep, type Situation } from '../../src/steps/step.ts';
import { batteryV, cuttingOutOhm, drawA, healthyPathOhm, LAMP_A } from '../../src/steps/supply/amp-feed.ts';
import { ampTerminals } from '../../src/steps/supply/amp-terminals.ts';
import { fuseSides } from '../../src/steps/supply/fuse-sides.ts';
import { plusPath } from '../../src/steps/supply/plus-path.ts';
import { supplyUnderLoad } from '../../src/steps/supply/supply-under-load.ts';
import { remoteKeyOff } from '../../src/steps/turn-on/remote-key-off.ts';
import { remoteSource } from '../../src/steps/turn-on/remote-source.ts';
import { remoteVolts } from '../../src/steps/turn-on/remote-volts.ts';
import { senseDc } from '../../src/steps/turn-on/sense-dc.ts';
import { senseLevel } from '../../src/steps/turn-on/sense-level.ts';
import { expectClose } from '../compute/close.ts';
import { evenly } from '../compute/evenly.ts';
import { anyRig } from '../rig/any-rig.ts';
import { anyStep, canBeUsed, type Digit, judged, on, whyUnusable } from './situation.ts';

/*
 * Each limit is tried at, just below and just above. The limits themselves: thresholds of amplifiers and batteries from
 * memory of the trade, no published source; what leads lose is worked by hand from IEC 60028 copper and ASTM B258.
 */

const RIG: Rig = EXAMPLE_RIGS['frame-fairing'];
const [FRONT_AMP, REAR_AMP] = EXAMPLE_RIGS.trunk.amps;
const S = on(RIG);
const READ: Situation = on(RIG, '0.01', {
  'amp-terminals': { readings: { batteryV: '12.5', plusV: '12.4', groundV: '0' } },
});

describe('positive and ground at the amplifier', () => {
  const read = (batteryVolts: number, plusV: number, groundV: number) =>
    judged(ampTerminals, { batteryV: batteryVolts, plusV, groundV }, S);
  it.each([
    [12.5, 12.5, 0, 'ok'],
    [12.5, 12.0, 0.49, 'ok'],
    [12.5, 11.99, 0, 'unclear'],
    [12.5, 12.5, 0.5, 'unclear'],
    [12.5, 6.25, 0, 'unclear'],
    // 4 V where 12 belong is a supply that gives way, not one that is not there.
    [12.5, 6.24, 0, 'sags'],
    [12.5, 4, 0, 'sags'],
    [12.5, 1.25, 0, 'sags'],
    [12.5, 1.24, 0, 'plus-open'],
    [12.5, 12.5, 6.25, 'ground-open'],
    [12.5, 0, 12.4, 'plus-open'],
    [11.8, 11.8, 0, 'ok'],
    [11.79, 11.7, 0, 'battery-low'],
    // An open lead is open on an empty battery, too.
    [11.79, 0, 0, 'plus-open'],
    [11.79, 11.7, 11.6, 'ground-open'],
    [14.99, 14.9, 0, 'ok'],
    [15, 14.9, 0, 'battery-high'],
  ])('at %f V with positive at %f V and ground at %f V mean %s', (supplyV, plusV, groundV, outcome) => {
    expect(read(supplyV, plusV, groundV)).toBe(outcome);
  });
  it('cannot be above the battery, beyond what the moment between two readings allows', () => {
    expect(whyUnusable(ampTerminals, { batteryV: 12.5, plusV: 12.9, groundV: 0 }, S)?.reading).toBe('plusV');
    expect(whyUnusable(ampTerminals, { batteryV: 12.5, plusV: 0, groundV: 13 }, S)?.reading).toBe('groundV');
    expect(whyUnusable(ampTerminals, { batteryV: 12.5, plusV: 12.7, groundV: 0 }, S)).toBeNull();
  });
});

describe('the main fuse between its two sides', () => {
  it.each([
    [12.5, 12.4, 'whole'],
    [12.5, 12, 'whole'],
    [12.5, 11.99, 'sags'],
    [11.99, 11.99, 'sags'],
    [12.5, 1.25, 'sags'],
    [12.5, 1.24, 'open'],
    [0.1, 0, 'no-feed'],
    [1.24, 1.24, 'no-feed'],
    [1.25, 1.25, 'sags'],
  ])('with %f V in and %f V out is %s', (inV, outV, outcome) => {
    expect(judged(fuseSides, { inV, outV }, READ)).toBe(outcome);
  });
});

describe('what healthy leads may lose', () => {
  it('is 9.8 mΩ on positive and 4.7 mΩ on ground for 1.6 m and 0.9 m of stranded 8 gauge', () => {
    // 1.16 (IEC 60228 class 5) × 17.241 nΩm (IEC 60028) × length / 8.37 mm², plus 6 and 2.5 mΩ of joints (trade).
    const { plusOhm, groundOhm } = healthyPathOhm(S);
    expectClose(plusOhm, 9.823e-3, 1e-3);
    expectClose(groundOhm, 4.65e-3, 1e-3);
  });
  it('is more where nobody knows the lead: the longest and thinnest that is usual', () => {
    expect(healthyPathOhm(on({})).plusOhm).toBeGreaterThan(healthyPathOhm(S).plusOhm);
  });
  it('is far less than what cuts the amplifier off, on any bike', () => {
    fc.assert(
      fc.property(anyRig, evenly(11.8, 15), (rig, supplyV) => {
        expect(cuttingOutOhm(on(rig), supplyV)).toBeGreaterThan(0);
      }),
    );
    expect(cuttingOutOhm(S, 12.6)).toBeGreaterThan(4 * healthyPathOhm(S).plusOhm);
  });
  it('is judged at a current that a bulb of 60 W at 12 V takes (UN R37, H4, from memory)', () => {
    expect(LAMP_A).toBe(60 / 12);
  });
});

describe('the supply under the lamp', () => {
  // 12.6 V − 10.5 V over the 360 W / 0.72 / 12.6 V = 39.7 A of full bass: 52.9 mΩ, which loses 0.265 V at 5 A.
  const cutsV = (12.6 - 10.5) / (360 / 0.72 / 12.6);
  it('cuts this amplifier off from 0.26 V on one way, at 12.6 V', () => {
    expectClose(LAMP_A * cuttingOutOhm(S, 12.6), LAMP_A * cutsV);
    expectClose(LAMP_A * cutsV, 0.2646, 1e-3);
    expectClose(drawA(S, 1, 12.6), 39.68, 1e-3);
  });
  const read = (plusDropV: number, groundDropV: number, battery = 12.6) =>
    judged(
      supplyUnderLoad,
      { batteryV: battery, ampV: (battery - plusDropV - groundDropV).toFixed(4), plusDropV, groundDropV },
      S,
    );
  it.each([
    [0.04, 0.02, 'ok'],
    // 20 mV over a sound lead is the last digit of a meter.
    [0.069, 0.0432, 'ok'],
    [0.0692, 0.02, 'plus-worn'],
    [0.04, 0.0434, 'ground-worn'],
    [0.264, 0.02, 'plus-worn'],
    [0.265, 0.02, 'plus-drop'],
    [0.04, 0.264, 'ground-worn'],
    [0.04, 0.265, 'ground-drop'],
    // Neither cuts it off alone, both together do: the one that is worse for its size.
    [0.13, 0.13, 'unclear'],
    [0.15, 0.15, 'ground-drop'],
    [0.25, 0.045, 'plus-drop'],
    [3, 2, 'plus-drop'],
    [2, 3, 'ground-drop'],
    [12.5, 0, 'plus-drop'],
    [0, 12.5, 'ground-drop'],
  ])('with %f V lost on positive and %f V on ground is %s', (plusDropV, groundDropV, outcome) => {
    expect(read(plusDropV, groundDropV)).toBe(outcome);
  });
  it('is the battery’s fault below 11.8 V, whatever the leads lose', () => {
    expect(read(3, 0, 11.79)).toBe('battery-sags');
    expect(read(0.04, 0.02, 11.8)).toBe('ok');
  });
  it('must add up: amplifier, positive and ground are the battery within 0.3 V', () => {
    const four = (ampV: number) => ({ batteryV: 12.6, ampV, plusDropV: 0.1, groundDropV: 0.1 });
    expect(canBeUsed(supplyUnderLoad, four(12.4), S)).toBe(true);
    expect(canBeUsed(supplyUnderLoad, four(12.11), S)).toBe(true);
    expect(whyUnusable(supplyUnderLoad, four(12.05), S)?.message).toMatch(/they are 0\.35 V off/);
  });
});

describe('the positive path, split', () => {
  const lost = (plusDropV: string) =>
    on(RIG, '0.01', {
      'supply-under-load': { readings: { batteryV: '12.3', ampV: '9.28', plusDropV, groundDropV: '0.02' } },
    });
  it.each([
    [2.9, 0.05, 'ring'],
    [0.05, 2.9, 'holder'],
    [0.05, 0.05, 'lead'],
    [1.4, 0.1, 'lead'],
    [1.6, 0.1, 'ring'],
  ])('with %f V at the ring and %f V across the holder of 3 V loses most in the %s', (ringV, holderV, where) => {
    expect(judged(plusPath, { ringV, holderV }, lost('3'))).toBe(where);
  });
  it('says what the whole way lost', () => expect(plusPath.healthy({}, lost('3'))).toMatch(/lost 3 V/));
});

describe('the remote terminal, on a battery of 12.5 V', () => {
  it.each([
    [2.99, 'none'],
    [3, 'low'],
    [8.99, 'low'],
    [9, 'unclear'],
    [11.49, 'unclear'],
    [11.5, 'ok'],
  ])('at %f V is %s', (remoteV, outcome) => expect(judged(remoteVolts, { remoteV }, READ)).toBe(outcome));
  it.each([
    [2.99, 'dead'],
    [3, 'low'],
    [9, 'live'],
  ])('reads %f V at its start: %s', (startV, outcome) => expect(judged(remoteSource, { startV }, READ)).toBe(outcome));
  it.each([
    [2.99, 'dead'],
    [3, 'live'],
  ])('reads %f V with the key off: %s', (remoteV, outcome) =>
    expect(judged(remoteKeyOff, { remoteV }, READ)).toBe(outcome),
  );
  it('takes the battery as the rig has it while nobody has read it', () => {
    expect(batteryV(READ)).toBe(12.5);
    expect(batteryV(S)).toBe(12.6);
    expect(batteryV(on({}))).toBe(12.6);
  });
});

describe('the DC that an amplifier waits for, on a battery of 12.5 V', () => {
  // 0.40 and 0.55 of 12.5 V.
  it.each([
    [2.99, 2.99, 'zero'],
    [3, 3, 'unclear'],
    [4.99, 4.99, 'unclear'],
    [5, 5, 'half'],
    [6.87, 6.8, 'half'],
    [6.88, 6.8, 'one-odd'],
    [5, 5.51, 'one-odd'],
    [7.5, 4.3, 'one-odd'],
    [0, 6, 'one-missing'],
    [6, 2.99, 'one-missing'],
  ])('at %f V and %f V is %s', (plusV, minusV, outcome) =>
    expect(judged(senseDc, { plusV, minusV }, READ)).toBe(outcome),
  );
});

describe('the sound that an amplifier waits for', () => {
  const read = (usualV: number, loudV: number, papersV?: number, digit: Digit = '0.01') =>
    judged(senseLevel, { usualV, loudV, ...(papersV !== undefined && { papersV }) }, on(RIG, digit));
  it.each([
    [0, 0.014, undefined, 'none'],
    [0.01, 0.016, undefined, 'low'],
    [0.049, 2, undefined, 'low'],
    [0.05, 2, undefined, 'unclear'],
    [0.99, 2, undefined, 'unclear'],
    [1, 2, undefined, 'ok'],
    [0.19, 2, 0.2, 'low'],
    [0.2, 2, 0.2, 'ok'],
  ])('at %f V, and %f V louder, with a threshold of %s V is %s', (usualV, loudV, papersV, outcome) => {
    expect(read(usualV, loudV, papersV)).toBe(outcome);
  });
  it('needs 0.15 V of a basic meter, whose last digit is 0.1 V', () => {
    expect(read(0, 0.1, undefined, '0.1')).toBe('none');
    expect(read(0.1, 0.2, undefined, '0.1')).toBe('low');
    expect(read(0.2, 0.2, undefined, '0.1')).toBe('unclear');
  });
  it('cannot be less when the volume is up', () =>
    expect(whyUnusable(senseLevel, { usualV: 1, loudV: 0.5 }, S)?.reading).toBe('loudV'));
});

describe('the speaker runs of an amplifier', () => {
  // Two wires that touch, and two 4 Ω speakers side by side, of which each reads 0.7 to 0.95 of its rating: from memory.
  it.each([
    [0.49, 'low'],
    [0.51, 'heavy'],
    [1.4, 'heavy'],
    [1.79, 'heavy'],
    [2.379, 'heavy'],
    [2.381, 'ok'],
    ['OL', 'ok'],
  ])('at %s Ω are %s behind 4 Ω speakers', (lowestOhm, outcome) => {
    expect(judged(ampRuns, { leadsOhm: '0', lowestOhm }, S)).toBe(outcome);
  });
  it('leave out what the meter’s own leads have', () => {
    expect(judged(ampRuns, { leadsOhm: '0.3', lowestOhm: '0.7' }, S)).toBe('low');
    expect(judged(ampRuns, { leadsOhm: '0.3', lowestOhm: '2.6' }, S)).toBe('heavy');
    expect(judged(ampRuns, { leadsOhm: '0.3', lowestOhm: '2.8' }, S)).toBe('ok');
  });
  it('are too heavy where two 2 Ω speakers hang side by side on an amplifier rated into 4 Ω', () => {
    const rig: Rig = { ...RIG, frontRatedOhm: 2, rearRatedOhm: 2, rearPerChannel: 2, rearWiring: 'parallel' };
    // 0.45 × 4 Ω: what two speakers of 4 Ω side by side read at the most.
    expect(judged(ampRuns, { leadsOhm: '0', lowestOhm: '0.49' }, on(rig))).toBe('low');
    expect(judged(ampRuns, { leadsOhm: '0', lowestOhm: '0.51' }, on(rig))).toBe('heavy');
    expect(judged(ampRuns, { leadsOhm: '0', lowestOhm: '1.79' }, on(rig))).toBe('heavy');
    expect(judged(ampRuns, { leadsOhm: '0', lowestOhm: '1.81' }, on(rig))).toBe('ok');
  });
  it('may be too few where nobody knows what the amplifier is made for', () => {
    const { ratedOhm: _, ...amp } = RIG.amps?.[0] ?? {};
    const rig: Rig = {
      ...RIG,
      amps: [amp],
      frontRatedOhm: 2,
      rearRatedOhm: 2,
      rearPerChannel: 1,
      rearWiring: 'single',
    };
    // Two coils of 4 Ω side by side read 1.4 to 1.9 Ω, and so does one of 2 Ω.
    expect(judged(ampRuns, { leadsOhm: '0', lowestOhm: '1.9' }, on(rig))).toBe('unclear');
    expect(judged(ampRuns, { leadsOhm: '0', lowestOhm: '2.1' }, on(rig))).toBe('ok');
  });
  it.each([
    [99, 'shorted'],
    [100, 'unclear'],
    [99_999, 'unclear'],
    [100_000, 'clear'],
  ])('%f Ω from the frame are %s', (lowestOhm, outcome) =>
    expect(judged(ampWiresToFrame, { lowestOhm }, S)).toBe(outcome),
  );
});

describe('DC across an output', () => {
  it.each([
    [0.049, 'ok'],
    [0.05, 'unclear'],
    [0.299, 'unclear'],
    [0.3, 'offset'],
  ])('of %f V is %s', (highestV, outcome) => expect(judged(ampDc, { highestV }, S)).toBe(outcome));
});

describe('which amplifier a case is about', () => {
  const said = (rig: Rig, pair: string) => on(rig, '0.01', { 'which-amp': { option: pair } });
  it('is the only one that there is', () => {
    expect(ampPair(S)).toBe('rear');
    expect(ampPair(on({ amps: [FRONT_AMP] }))).toBe('front');
    expect(whichAmp.known(RIG)).toBe('rear');
  });
  it('is the one that was said, of two', () => {
    expect(whichAmp.known(EXAMPLE_RIGS.trunk)).toBeUndefined();
    expect(theAmp(said(EXAMPLE_RIGS.trunk, 'front'))).toEqual(FRONT_AMP);
    expect(theAmp(said(EXAMPLE_RIGS.trunk, 'rear'))).toEqual(REAR_AMP);
  });
  it('gets a place on a bike of which nobody said that it has one', () => {
    expect(whichAmp.learn('front', {})).toEqual({ frontFedBy: 'amp', amps: [{ drives: 'front' }] });
    expect(whichAmp.learn('rear', { amps: [{}] })).toEqual({ rearFedBy: 'amp', amps: [{ drives: 'rear' }] });
  });
});

const STEPS = [
  ampTerminals,
  fuseSides,
  supplyUnderLoad,
  remoteVolts,
  remoteSource,
  remoteKeyOff,
  senseDc,
  senseLevel,
  ampWiresToFrame,
  ampRuns,
  ampDc,
];

describe.each(STEPS.map((step) => [step.id, anyStep(step)] as const))('the bands of %s', (_, step: ReadingStep) => {
  const values = fc.record(
    Object.fromEntries(Object.keys(step.readings).map((name) => [name, evenly(name === 'batteryV' ? 8 : 0, 14)])),
  );
  const situations = fc
    .tuple(anyRig, fc.constantFrom<Digit>('0.001', '0.01', '0.1'))
    .map(([rig, digit]) => on(rig, digit));
  const drawn = (name: string, v: Readonly<Record<string, number>>, s: Situation): readonly Band[] =>
    step.bands(name, v, s) ?? [];

  it('lie side by side from low to high, each with a name, one of them healthy, on every bike', () => {
    let seen = 0;
    fc.assert(
      fc.property(situations, values, (s, v) => {
        for (const name of Object.keys(step.readings)) {
          const bands = drawn(name, v, s);
          seen += bands.length;
          for (const [i, { low, high, label }] of bands.entries()) {
            expect(label).not.toBe('');
            expect(low).toBeLessThanOrEqual(high);
            if (i > 0) expect(low).toBe(bands[i - 1]?.high);
          }
          if (bands.length > 0) expect(bands.some(({ mood }) => mood === 'good')).toBe(true);
        }
      }),
    );
    expect(seen).toBeGreaterThan(0);
  });

  it('show what the outcome will be: all in healthy bands is good, and nothing else is', () => {
    const good = ['ok', 'whole', 'live', 'dead', 'half', 'clear'];
    fc.assert(
      fc.property(situations, values, (s, v) => {
        const readings = Object.fromEntries(Object.entries(v).map(([name, value]) => [name, value.toFixed(4)]));
        const typed = valuesIn({ readings }, step);
        fc.pre(!step.unusable?.(typed, s));
        const labels = Object.keys(step.readings).flatMap((name) => {
          const bands = drawn(name, typed, s);
          return bands.length === 0 ? [] : [bandOf(bands, typed[name] ?? 0)?.mood];
        });
        const outcome = step.judge(typed, s);
        if (labels.every((mood) => mood === 'good') && step.id !== 'sense-dc' && step.id !== 'sense-level')
          expect(good).toContain(outcome);
        if (labels.includes('bad') && step.id !== 'remote-key-off')
          expect(good.filter((g) => g !== 'dead')).not.toContain(outcome);
      }),
    );
  });

  it('come with a sentence that names a healthy figure', () => {
    fc.assert(
      fc.property(situations, (s) => {
        expect(step.healthy({}, s)).toMatch(/\d/);
      }),
      { numRuns: 20 },
    );
  });
});

describe('what the supply under the lamp calls healthy', () => {
  it('is the healthy band of both ways, in volts', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const text = supplyUnderLoad.healthy({ batteryV: 12.6 }, on(rig));
        for (const drop of ['plusDropV', 'groundDropV']) {
          const band = supplyUnderLoad.bands(drop, { batteryV: 12.6 }, on(rig))?.[0];
          expect(text).toContain(formatQuantity(band?.high ?? 0, 'V', 2));
        }
      }),
    );
  });
});
