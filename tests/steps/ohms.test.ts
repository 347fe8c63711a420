import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ampRuns } from '../../src/steps/runs/amp-runs.ts';
import { coilOhms } from '../../src/steps/runs/coil-ohms.ts';
import { runOhms } from '../../src/steps/runs/run-ohms.ts';
import { wireToFrame } from '../../src/steps/runs/wire-to-frame.ts';
import { type Band, bandOf } from '../../src/steps/step.ts';
import { expectClose } from '../compute/close.ts';
import { judged, on, whyUnusable } from './situation.ts';

/*
 * A coil reads 0.7 to 0.95 of its rated ohms, a contact adds up to 0.3 Ω when good and more than 1 Ω when bad, ten times
 * the rated ohms is open: common practice, no published source. Makers differ: a published reference table has drivers
 * rated 2, 4 and 8 Ω at 1.2 to 2, 3.1 to 4 and 5.7 to 8 Ω, so from 0.6 of the rating up to all of it passes.
 */
const BIKE: Rig = { ...EXAMPLE_RIGS['frame-fairing'], rearRatedOhm: 4 };
const rated = (rearRatedOhm: number): Rig => ({ ...BIKE, rearRatedOhm });
/** 2 × 2.2 m of 2.08 mm² copper at 1.7241e-8 Ω m (IEC 60028). */
const WIRES_OHM = (2 * 2.2 * 1.7241e-8) / 2.08e-6;

const named = (bands: readonly Band[] | null, label: string) => {
  const band = bands?.find((one) => one.label === label);
  if (!band) throw new Error(`no band ${label}`);
  return band;
};
const runBand = (rig: Rig, label = 'healthy', leadsOhm = 0) =>
  named(runOhms.bands('leftOhm', { leadsOhm }, on(rig)), label);

describe('the speaker run in ohms', () => {
  const read = (leftOhm: number | string, rightOhm: number | string = 3.6, rig = BIKE, leadsOhm: number | string = 0) =>
    judged(runOhms, { leadsOhm, leftOhm, rightOhm }, on(rig));

  it.each([2, 4, 8])('is healthy from 0.6 of %i Ω to all of it positive both wires and 0.3 Ω', (ratedOhm) => {
    const { low, high } = runBand(rated(ratedOhm));
    expectClose(low, 0.85 * 0.7 * ratedOhm);
    expectClose(high, ratedOhm + WIRES_OHM + 0.3, 1e-3);
  });
  it.each([
    ['low', 2.37],
    ['ok', 2.39],
    ['ok', 4.33],
    ['unclear', 4.34],
    ['unclear', 5.03],
    ['high', 5.04],
    ['high', 39.9],
    // Film, green and water still pass what a meter sends: hundreds of ohms to hundreds of thousands. A wire that ends reads
    // OL. Common practice, no published source.
    ['high', 850],
    ['high', 999_000],
    ['open', 1_000_000],
    ['open', 'OL'],
  ])('is %s at %s Ω for one speaker of 4 Ω', (outcome, ohm) => {
    expect(read(ohm)).toBe(outcome);
    expect(read(3.6, ohm)).toBe(outcome);
  });
  it('is healthy for two speakers of 4 Ω in parallel at 1.7 Ω, where one alone would be shorted', () => {
    const parallel: Rig = { ...BIKE, rearPerChannel: 2, rearWiring: 'parallel' };
    expect(read(1.7, 1.7, parallel)).toBe('ok');
    expect(read(1.7)).toBe('low');
    expect(read(0.9, 1.7, parallel)).toBe('low');
    expect(runBand(parallel)).toEqual(runBand(rated(2)));
  });
  it('is healthy for two of 4 Ω in series at 7 Ω, and shorted at 3.6 Ω', () => {
    const series: Rig = { ...BIKE, rearPerChannel: 2, rearWiring: 'series' };
    expect(read(7, 7, series)).toBe('ok');
    expect(read(3.6, 7, series)).toBe('low');
    expect(runBand(series)).toEqual(runBand(rated(8)));
  });
  it('takes several as two when they are in parallel or in series and nobody counted them', () => {
    const { rearPerChannel: _, ...uncounted } = BIKE;
    for (const rearWiring of ['parallel', 'series'] as const) {
      expect(runBand({ ...uncounted, rearWiring })).toEqual(runBand({ ...BIKE, rearWiring, rearPerChannel: 2 }));
    }
  });
  it('covers parallel and series when two are known to hang there and nobody knows how', () => {
    const { rearWiring: _, ...unwired } = { ...BIKE, rearPerChannel: 2 };
    const { low, high } = runBand(unwired);
    expectClose(low, runBand({ ...unwired, rearWiring: 'parallel' }).low);
    expectClose(high, runBand({ ...unwired, rearWiring: 'series' }).high);
  });
  it('gets wider when nobody knows the rating, the wire, or how many there are', () => {
    const known = runBand(BIKE);
    const { rearRatedOhm: _a, ...unrated } = BIKE;
    const { rearRunM: _b, rearRunM2: _c, ...wireless } = BIKE;
    const { rearWiring: _d, rearPerChannel: _e, ...uncounted } = BIKE;
    for (const less of [unrated, wireless, uncounted]) {
      const { low, high } = runBand(less);
      expect(high - low).toBeGreaterThan(known.high - known.low);
    }
    // Two of 2 Ω in parallel at the low end; 4 Ω behind 3.5 m of 0.82 mm² at the high one.
    expectClose(runBand({}).low, 0.85 * 0.7 * 1);
    expectClose(runBand({}).high, 4 + (2 * 3.5 * 1.7241e-8) / 0.82e-6 + 0.3, 1e-3);
  });
  it('takes the leads off what was read, and puts them on the scale', () => {
    expect(read(2.5, 3.6, BIKE, 0)).toBe('ok');
    expect(read(2.5, 3.6, BIKE, 0.3)).toBe('low');
    expect(read(0.2, 3.6, BIKE, 0.5)).toBe('low');
    expect(read(3, 3, BIKE, 0.5)).toBe('ok');
    expectClose(runBand(BIKE, 'healthy', 0.5).low, runBand(BIKE).low + 0.5);
    expect(runBand(BIKE, 'shorted', 0.5).low).toBe(0);
  });
  it('is open as soon as one run is, then shorted, then bad, then unclear', () => {
    expect(read('OL', 0.1)).toBe('open');
    expect(read(0.1, 12)).toBe('low');
    expect(read(12, 4.5)).toBe('high');
    expect(read(4.5, 3.6)).toBe('unclear');
  });
  it('is unclear where nobody knows the rating and one side reads far less than the other, half shorted or not', () => {
    const { rearRatedOhm: _, ...unknown } = BIKE;
    // Two coils of a kind are within a few per cent when sound, and one with half of its turns shorted reads half: 0.7 of
    // 3.6 Ω less 0.3 Ω for a contact lies between. Common practice, no published source.
    const leastOhm = 2.22;
    expect(read(leastOhm + 0.01, 3.6, unknown)).toBe('ok');
    expect(read(leastOhm - 0.01, 3.6, unknown)).toBe('unclear');
    expect(read(3.6, leastOhm - 0.01, unknown)).toBe('unclear');
    expect(read(1.1, 3.6, unknown)).toBe('low');
    // A coil of 2 Ω with a good contact more in its way is still healthy beside one without.
    expect(read(1.4, 2.2, unknown)).toBe('ok');
    // Who knows the rating is not told by the other side.
    expect(read(1.7, 2.2, rated(2))).toBe('ok');
  });
  it('cannot be judged with probes that do not touch each other: that is an open lead, not zero', () => {
    expect(read(3.6, 3.6, BIKE, 'OL')).toBeUndefined();
    expect(read('OL', 'OL', BIKE, 'OL')).toBeUndefined();
    expect(read(3.6, 3.6, BIKE, 5.1)).toBeUndefined();
    expect(read(8.6, 8.6, BIKE, 5)).toBe('ok');
  });
  it('says the healthy ohms of this bike and that a tweeter reads open', () => {
    expect(runOhms.healthy({ leadsOhm: 0.2 }, on(BIKE))).toBe(
      'Healthy is 2.4 to 4.3 Ω, after taking off 0.2 Ω for your leads. A tweeter behind a capacitor reads open and is healthy.',
    );
    expect(runOhms.healthy({}, on(BIKE))).toMatch(/^Healthy is 2\.4 to 4\.3 Ω, after taking off your leads\./);
  });
});

describe('the coil by itself', () => {
  const read = (coilOhm: number | string, rig = BIKE, leadsOhm = 0) => judged(coilOhms, { leadsOhm, coilOhm }, on(rig));

  it.each([
    [2, 1.2, 2],
    [4, 3.1, 4],
    [8, 5.7, 8],
  ])('passes published drivers of %i Ω from %f to %i Ω, and asks for a hot one to cool', (ratedOhm, low, high) => {
    for (const ohm of [low, (low + high) / 2, high]) expect(read(ohm, rated(ratedOhm))).toBe('ok');
    expect(read(1.4 * high, rated(ratedOhm))).toBe('unclear');
  });
  it('passes the same drivers in the run, with its wires on top', () => {
    const inRun = (ratedOhm: number, ohm: number) =>
      judged(runOhms, { leadsOhm: 0, leftOhm: ohm + WIRES_OHM, rightOhm: ohm + WIRES_OHM }, on(rated(ratedOhm)));
    for (const [ratedOhm, ...ohms] of [
      [2, 1.2, 2],
      [4, 3.1, 4],
      [8, 5.7, 8],
    ] as const) {
      for (const ohm of ohms) expect(inRun(ratedOhm, ohm)).toBe('ok');
    }
  });
  it.each([
    ['low', 2.37],
    ['ok', 2.39],
    ['ok', 4.29],
    ['unclear', 4.31],
    ['unclear', 39.9],
    ['open', 40],
    ['open', 'OL'],
  ])('is %s at %s Ω for a speaker of 4 Ω', (outcome, ohm) => expect(read(ohm)).toBe(outcome));
  it('takes 2 to 4 Ω when nobody knows the rating', () => {
    const { rearRatedOhm: _, ...unknown } = BIKE;
    expect(read(1.3, unknown)).toBe('ok');
    expect(read(1.1, unknown)).toBe('low');
    expect(read(4.2, unknown)).toBe('ok');
    expect(read(7.5, unknown)).toBe('unclear');
    expect(read(7.5, rated(8))).toBe('ok');
  });
  it('takes the leads off, and cannot be judged with open leads', () => {
    expect(read(2.6, BIKE, 0.3)).toBe('low');
    expect(judged(coilOhms, { leadsOhm: 'OL', coilOhm: 'OL' }, on(BIKE))).toBeUndefined();
  });
  it('says what passes, which is what passes in its run less the wires', () => {
    expect(coilOhms.healthy({}, on(BIKE))).toBe(
      'Healthy is 2.4 to 4.3 Ω, after taking off your leads. Just after loud music it reads up to half as much again.',
    );
    for (const ratedOhm of [2, 4, 8]) {
      const coil = named(coilOhms.bands('coilOhm', {}, on(rated(ratedOhm))), 'healthy');
      expectClose(runBand(rated(ratedOhm)).low, coil.low);
      expectClose(runBand(rated(ratedOhm)).high, coil.high + WIRES_OHM, 1e-3);
    }
  });
  it.each([
    ['a run', runOhms, { leadsOhm: 2, leftOhm: 0.1, rightOhm: 3.5 }, 'leftOhm'],
    ['the other run', runOhms, { leadsOhm: 2, leftOhm: 5.6, rightOhm: 1.49 }, 'rightOhm'],
    ['a coil', coilOhms, { leadsOhm: 0.8, coilOhm: 0.2 }, 'coilOhm'],
    ['a run of an amplifier', ampRuns, { leadsOhm: 1, lowestOhm: 0.4 }, 'lowestOhm'],
  ])(
    'is questioned where %s reads clearly less than the leads that it was read through',
    (_, step, values, reading) => {
      expect(whyUnusable(step, values, on(BIKE))?.reading).toBe(reading);
      expect(judged(step, values, on(BIKE))).toBeUndefined();
    },
  );
  it('is believed where two touches of the probes may differ by so much', () => {
    expect(judged(runOhms, { leadsOhm: 0.6, leftOhm: 0.1, rightOhm: 3.5 }, on(BIKE))).toBe('low');
    expect(judged(coilOhms, { leadsOhm: 0.5, coilOhm: 0 }, on(BIKE))).toBe('low');
  });
});

describe('the speaker wires to the frame', () => {
  it.each([
    ['shorted', 0],
    ['shorted', 99],
    ['unclear', 100],
    ['unclear', '99 kΩ'],
    ['clear', '100 kΩ'],
    ['clear', '2 M'],
    ['clear', 'OL'],
  ])('are %s at %s', (outcome, lowestOhm) => expect(judged(wireToFrame, { lowestOhm }, on({}))).toBe(outcome));
  it('say both limits', () => {
    expect(wireToFrame.healthy({}, on({}))).toBe(
      'Healthy is above 100 kΩ or OL on every wire. Below 100 Ω, or a beep, a wire touches.',
    );
  });
  it('put an open circuit into the last band', () => {
    const bands = wireToFrame.bands('lowestOhm', {}, on({})) ?? [];
    expect(bandOf(bands, Infinity)?.label).toBe('clear');
  });
});
