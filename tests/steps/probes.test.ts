import { describe, expect, it } from 'vitest';
import { lookAt } from '../../src/observe/bike.ts';
import { dcAt, probesAt } from '../../src/observe/probes.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { probesOf } from '../../src/steps/probes-of.ts';
import { type ReadingStep, type Step, shownBand } from '../../src/steps/step.ts';
import { TEST_POINTS, type TestPoint } from '../../src/steps/test-points.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { ridden } from '../../src/world/symptoms/index.ts';
import { on } from './situation.ts';
import { plainly } from './words.ts';

const STEPS = (Object.values(ALL_STEPS) as readonly Step[]).filter(
  (step): step is ReadingStep => step.kind === 'reading',
);
/** An amplifier that is fed by the front pair only: its input is read against another pair. */
const FED_BY_FRONT: Rig = { rearFedBy: 'amp', amps: [{ drives: 'both', fedFrom: 'front' }] };
const SITUATIONS = [{}, FED_BY_FRONT, ...Object.values(EXAMPLE_RIGS)].map((rig: Rig) => on(rig));

const placesOf = (step: ReadingStep, name: string) =>
  SITUATIONS.map((situation) => probesOf(step, step.readings[name], situation));

/** What has no place in the drawing. */
const NOT_DRAWN =
  /held together|blade to blade|in its papers|^feed |^its ground wire|^lowest of its wires|^highest of the pairs/i;
/** What a label may not say unless the red probe stands there. */
const RED_IS_AT: readonly (readonly [label: RegExp, points: readonly TestPoint[]])[] = [
  [/^battery positive$/i, ['battery-plus']],
  [/^amplifier positive/i, ['amp-plus']],
  [/^amplifier ground/i, ['amp-ground']],
  [/^battery side/i, ['fuse-in']],
  [/^amplifier side/i, ['fuse-out']],
  [/^post to holder/i, ['battery-plus']],
  [/^across the holder/i, ['fuse-in']],
  [/positive path/i, ['battery-plus']],
  [/ground path/i, ['amp-ground']],
  [/^positive: copper/i, ['plus-copper']],
  [/^ground: terminal/i, ['amp-ground']],
  [/^remote terminal/i, ['amp-remote']],
  [/start of the remote wire/i, ['remote-start']],
  [/^front pair/i, ['unit-front-plus']],
  [/input/i, ['amp-in-plus', 'amp-in-minus']],
  [/output/i, ['amp-out-plus']],
  [/\brun\b/i, ['run-plus']],
];

/** The same two places read again on purpose: the other side of the bike, or another sound. */
const OTHERWISE_ALIKE = /\b(left|right)\b|\b(tone|Hz|volume|quarters up)\b|\b(idle|rpm)\b/i;

describe.each(STEPS.map((step) => [step.id, step] as const))('the probes of %s', (_, step) => {
  it('stand for each reading where its label says', () => {
    for (const [name, { label }] of Object.entries(step.readings))
      for (const [words, points] of RED_IS_AT)
        if (words.test(label))
          for (const places of placesOf(step, name)) expect(places && points, label).toContain(places?.red);
  });
  it('stand at the same two places for two readings only where the side, the sound or the engine is another', () => {
    const byPlaces = Map.groupBy(Object.keys(step.readings), (name) => JSON.stringify(placesOf(step, name)));
    for (const [places, names] of byPlaces) {
      if (names.length === 1 || /^\[(null,?)+\]$/.test(places)) continue;
      for (const name of names) expect(step.readings[name]?.label).toMatch(OTHERWISE_ALIKE);
    }
  });
  it('are drawn for each reading, but for what is read off the meter, off papers, or in the plug of the head unit', () => {
    for (const [name, { label }] of Object.entries(step.readings))
      if (placesOf(step, name).some((places) => places === null)) expect(label).toMatch(NOT_DRAWN);
  });
  it('are never both at one place', () => {
    for (const name of Object.keys(step.readings))
      for (const places of placesOf(step, name)) if (places) expect(places.red).not.toBe(places.black);
  });
});

/** What stands beside it, and where the black one then belongs. */
const BLACK_IS_AT: readonly (readonly [label: RegExp, black: TestPoint])[] = [
  [/^battery positive$/i, 'battery-minus'],
  [/^amplifier positive to its ground/i, 'amp-ground'],
  [/positive path/i, 'amp-plus'],
  [/ground path/i, 'battery-minus'],
  [/^post to holder/i, 'fuse-in'],
  [/^across the holder/i, 'fuse-out'],
  [/^positive: copper/i, 'amp-plus'],
  [/^ground: terminal/i, 'ground-copper'],
  [/^lowest$/i, 'amp-ground'],
];
const PLUS_OF: ReadonlyMap<TestPoint, TestPoint> = new Map(
  (Object.keys(TEST_POINTS) as TestPoint[]).flatMap((point) => {
    const minus = point.replace(/-plus$/, '-minus');
    const pair = /^(unit|amp-in|amp-out|run|speaker)/.test(point) && point.endsWith('-plus') && minus in TEST_POINTS;
    return pair ? [[minus as TestPoint, point] as const] : [];
  }),
);
const PLUSES = new Set(PLUS_OF.values());

describe.each(STEPS.map((step) => [step.id, step] as const))('the black probe of %s', (_, step) => {
  const each = Object.entries(step.readings).flatMap(([name, reading]) =>
    placesOf(step, name).flatMap((places) =>
      places ? [{ name, label: plainly(reading.label), unit: reading.unit, ...places }] : [],
    ),
  );
  it('stands where the label says', () => {
    for (const { label, black } of each)
      for (const [words, point] of BLACK_IS_AT) if (words.test(label)) expect(black, label).toBe(point);
  });
  it('stands on the battery negative post where that is what everything is read against', () => {
    if (!step.conditions?.includes('black-on-minus')) return;
    for (const { label, black } of each) expect(black, label).toBe('battery-minus');
  });
  it('stands on the other wire of a pair, where red is on its positive and nothing else is read against', () => {
    for (const { label, red, black } of each) {
      if (black === 'battery-minus' || black === 'frame') continue;
      if (PLUSES.has(red)) expect(PLUS_OF.get(black), label).toBe(red);
      expect(PLUS_OF.has(red), label).toBe(false);
    }
  });
  it('stands on the frame only in ohms, where the step is about a wire that touches it', () => {
    const toFrame = /to the frame/i.test(plainly(step.short));
    for (const { label, red, black } of each) {
      expect(black === 'frame', label).toBe(toFrame);
      if (toFrame) expect(red, label).toBe('run-plus');
    }
  });
  it('is never on a positive that the red one is not in front of', () => {
    for (const { label, black } of each)
      expect(['battery-plus', 'plus-copper', 'amp-remote', 'remote-start'], label).not.toContain(black);
  });
});

/* On a sound bike of the model the two places read what the step calls healthy, and red is never below black. */
describe.each(
  STEPS.filter(({ conditions }) => conditions?.includes('meter-on-dc')).map((step) => [step.id, step] as const),
)('the probes of %s on a sound bike', (_, step) => {
  it('read volts that are above nothing and in no bad band', () => {
    const rig = EXAMPLE_RIGS['frame-fairing'];
    const bike = ridden(healthyWorld(rig));
    const moment = {
      toneHz: null,
      ...(step.conditions?.includes('lamp-on') && { lamp: true }),
      ...(step.conditions?.includes('engine-running') && { engine: 'cruise' as const }),
      ...(step.conditions?.includes('key-off') && { key: 'off' as const }),
      ...(step.conditions?.includes('amp-outputs-off') && { apart: ['amp-outputs'] as const }),
    };
    const look = lookAt(bike, moment);
    if (!look) expect.fail('no operating point');
    const values: Record<string, number> = {};
    for (const [name, reading] of Object.entries(step.readings)) {
      const at = probesOf(step, reading, on(rig));
      const probes = at && probesAt(bike, [at.red, at.black], 'rear-left');
      if (probes) values[name] = dcAt(look, probes) ?? expect.fail(`${name}: no such place`);
    }
    for (const [name, value] of Object.entries(values)) {
      expect(value, name).toBeGreaterThan(-1e-3);
      const bands = step.bands(name, values, on(rig));
      if (bands) expect(shownBand(bands, value)?.mood, `${name}: ${value}`).not.toBe('bad');
    }
    // What was lost adds up to what is missing, and a battery reads as one.
    const label = (name: string) => plainly(step.readings[name]?.label ?? '');
    for (const [name, value] of Object.entries(values)) {
      const whole =
        /^(battery positive|amplifier positive|battery side|amplifier side|lowest$|start of the remote|amplifier positive to its ground)/i;
      if (whole.test(label(name))) expect(value, label(name)).toBeGreaterThan(11);
      if (/lost on|holder|copper|^amplifier ground/i.test(label(name))) expect(value, label(name)).toBeLessThan(0.5);
    }
  });
});
