import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { probesOf } from '../../src/steps/probes-of.ts';
import type { ReadingStep, Step } from '../../src/steps/step.ts';
import type { TestPoint } from '../../src/steps/test-points.ts';
import { on } from './situation.ts';

const STEPS = (Object.values(ALL_STEPS) as readonly Step[]).filter(
  (step): step is ReadingStep => step.kind === 'reading',
);
const SITUATIONS = [{}, ...Object.values(EXAMPLE_RIGS)].map((rig) => on(rig));

const placesOf = (step: ReadingStep, name: string) =>
  SITUATIONS.map((situation) => probesOf(step, step.readings[name], situation));

/** What a label may not say unless the red probe stands there. */
const RED_IS_AT: readonly (readonly [label: RegExp, points: readonly TestPoint[]])[] = [
  [/^battery plus$/i, ['battery-plus']],
  [/^amplifier plus/i, ['amp-plus']],
  [/^amplifier ground/i, ['amp-ground']],
  [/^battery side/i, ['fuse-in']],
  [/^amplifier side/i, ['fuse-out']],
  [/^post to holder/i, ['battery-plus']],
  [/^across the holder/i, ['fuse-in']],
  [/plus way/i, ['battery-plus']],
  [/ground way/i, ['amp-ground']],
  [/^plus: copper/i, ['plus-copper']],
  [/^ground: terminal/i, ['amp-ground']],
  [/^remote terminal/i, ['amp-remote']],
  [/start of the remote wire/i, ['remote-start']],
  [/^front pair/i, ['unit-front-plus']],
  [/input/i, ['amp-in-plus', 'amp-in-minus']],
  [/output/i, ['amp-out-plus']],
  [/\brun\b/i, ['run-plus']],
];

/** The same two places read again on purpose: the other side of the bike, or another sound. */
const OTHERWISE_ALIKE = /\b(left|right)\b|\b(tone|Hz|volume|quarters up)\b/i;

describe.each(STEPS.map((step) => [step.id, step] as const))('the probes of %s', (_, step) => {
  it('stand for each reading where its label says', () => {
    for (const [name, { label }] of Object.entries(step.readings))
      for (const [words, points] of RED_IS_AT)
        if (words.test(label))
          for (const places of placesOf(step, name)) expect(places && points, label).toContain(places?.red);
  });
  it('stand at the same two places for two readings only where the side or the sound is another', () => {
    const byPlaces = Map.groupBy(Object.keys(step.readings), (name) => JSON.stringify(placesOf(step, name)));
    for (const [places, names] of byPlaces) {
      if (names.length === 1 || /^\[(null,?)+\]$/.test(places)) continue;
      for (const name of names) expect(step.readings[name]?.label).toMatch(OTHERWISE_ALIKE);
    }
  });
  it('are never both at one place', () => {
    for (const name of Object.keys(step.readings))
      for (const places of placesOf(step, name)) if (places) expect(places.red).not.toBe(places.black);
  });
});
