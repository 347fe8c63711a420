import { describe, expect, it } from 'vitest';
import { observe } from '../../src/observe/index.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { outcomeOf } from '../../src/steps/outcome.ts';
import { FAULTS, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { EXACT_METER } from '../../src/world/meter.ts';
import { COMPLAINTS, type Ridden, ridden } from '../../src/world/symptoms/index.ts';
import { TWENTY_RIGS } from './rigs.ts';

/*
 * What is found on a bike of which nothing plays. Common practice of the trade, no published source: a paused or muted
 * source counts as cured by playing on, a dark screen with both feeds there is the unit or its own fuse, and one speaker
 * wire on ground silences all outputs of a unit that protects itself as a whole.
 */
const STEPS = [
  'unit-screen',
  'source-plays',
  'other-source',
  'audio-target',
  'unit-restart',
  'unit-fuses',
  'unit-fuse-ohms',
  'unit-pins',
  'unit-feeds',
  'unit-wires-to-frame',
  'bike-lights',
  'unit-fuse-swap',
  'headset-hears',
  'play-signs',
  'unit-sends',
  'mute-wire',
] as const;
const SOUND = {
  'unit-screen': 'normal',
  'source-plays': 'no-change',
  'other-source': 'same',
  'audio-target': 'no-change',
  'unit-restart': 'no-change',
  'unit-fuses': 'whole',
  'unit-fuse-ohms': 'through',
  'unit-pins': 'level',
  'unit-feeds': 'ok',
  'unit-wires-to-frame': 'clear',
  'bike-lights': 'bright',
  'unit-fuse-swap': 'no-change',
  'headset-hears': 'silent',
  'play-signs': 'clear',
  'unit-sends': 'nothing',
  'mute-wire': 'no-change',
};
const FINDS: readonly (readonly [
  fault: string,
  rig: string,
  finds: Partial<Record<(typeof STEPS)[number], string>>,
])[] = [
  ['paused-or-muted', 'no amplifier, built with two', { 'source-plays': 'cured', 'play-signs': 'muted' }],
  [
    'paused-or-muted@phone',
    'no amplifier, built with two',
    { 'source-plays': 'cured', 'other-source': 'good', 'play-signs': 'paused' },
  ],
  ['routed-to-headset', 'no amplifier, built with two', { 'audio-target': 'cured', 'headset-hears': 'hears' }],
  ['unit-hung', 'no amplifier, built with two', { 'unit-screen': 'hung', 'unit-restart': 'cured' }],
  [
    'unit-fuse-open',
    'no amplifier, built with two',
    { 'unit-screen': 'dark', 'unit-fuses': 'burnt', 'unit-fuse-ohms': 'open', 'unit-fuse-swap': 'starts' },
  ],
  ['unit-dead', 'no amplifier, built with two', { 'unit-screen': 'dark' }],
  // It looks as if nothing were wrong.
  ['unit-outputs-dead', 'no amplifier, built with two', {}],
  [
    'unit-feed-missing',
    'no amplifier, built with two',
    { 'unit-screen': 'dark', 'unit-pins': 'back', 'unit-feeds': 'missing' },
  ],
  [
    'mute-line-grounded',
    'no amplifier, replaced unit',
    { 'source-plays': 'mute-stays', 'play-signs': 'muted', 'mute-wire': 'cured' },
  ],
  ['main-fuse-open', 'front and rear on one amplifier by wire', { 'unit-sends': 'sends' }],
];

/** Sees and finds everything that can be seen: no draw is unlucky. */
const LUCKY = { meter: EXACT_METER, draw: () => 0.5 };

function said(id: (typeof STEPS)[number], bike: Ridden): string | undefined {
  const step = ALL_STEPS[id] ?? expect.fail(id);
  const answer = observe(step, bike, { rig: bike.world.rig, facts: {} }, LUCKY);
  return outcomeOf(step, { rig: bike.world.rig, facts: { [id]: answer } });
}

describe.each(FINDS)('a bike with %s, %s', (key, name, finds) => {
  const rig: Rig = TWENTY_RIGS[name] ?? expect.fail(name);
  const fault = FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(key);
  const bike = ridden(fault.apply(healthyWorld(rig), severityAt(fault, 0.5)));

  it('plays nothing anywhere', () => {
    expect(COMPLAINTS['no-sound-at-all'](bike)).toBe('yes');
  });
  it.each(STEPS)('shows at %s what such a bike shows', (id) => {
    expect(said(id, bike)).toBe(finds[id] ?? SOUND[id]);
  });
});

describe('a lithium battery that switched itself off', () => {
  const rig: Rig = { ...TWENTY_RIGS['no amplifier, built with two'], batteryKind: 'lithium' };
  const fault = FAULTS.find((one) => keyOf(one) === 'battery-cuts-off@empty') ?? expect.fail('no such fault');
  const bike = ridden(fault.apply(healthyWorld(rig), severityAt(fault, 0.5)));

  it('leaves the whole bike dark or dim, and not only its head unit', () => {
    expect(said('unit-screen', bike)).toBe('dark');
    expect(said('bike-lights', bike)).not.toBe('bright');
  });
});
