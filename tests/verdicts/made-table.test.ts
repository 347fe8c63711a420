import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { AMP_SIGNS } from '../../src/verdicts/amp/made-signs.ts';
import { AMP_AT_TIMES_SIGNS } from '../../src/verdicts/amp/made-signs-at-times.ts';
import { type MadeTable, packTable, suspectTable, unpackTable } from '../../src/verdicts/made-table.ts';
import { REAR_SIGNS } from '../../src/verdicts/rear/made-signs.ts';

/* Three who can be behind a pump that does not start, made up for the test. */
const PUMP: MadeTable = {
  suspects: [
    {
      verdict: 'fuse',
      weight: 6,
      shows: { lamp: { off: 1 }, hum: { silent: 1 }, 'last-change': { battery: 0.5, nothing: 0.5 } },
    },
    {
      verdict: 'motor',
      weight: 3,
      shows: { lamp: { on: 1 }, hum: { silent: 0.8, hums: 0.2 }, 'last-change': { nothing: 1 } },
    },
    { verdict: 'shaft', weight: 1, shows: { lamp: { on: 1 }, 'last-change': { nothing: 1 } } },
  ],
  sound: { lamp: 'on' },
};
const TEXTS = Object.fromEntries(['fuse', 'motor', 'shaft'].map((id) => [id, { title: id, split: 'Look at it.' }]));

describe('a packed table', () => {
  it('says the same when it is unpacked', () => expect(unpackTable(packTable(PUMP))).toEqual(PUMP));
  it('names once what most suspects show, and of each only where it differs', () => {
    expect(packTable(PUMP)).toEqual({
      common: { lamp: 'on', hum: 'silent', 'last-change': 'nothing' },
      suspects: [
        ['fuse', 6, { lamp: 'off', 'last-change': { battery: 0.5, nothing: 0.5 } }],
        ['motor', 3, { hum: { silent: 0.8, hums: 0.2 } }],
        ['shaft', 1, { hum: null }],
      ],
      sound: { lamp: 'on' },
    });
  });
  it.each([
    ['no-rear-sound', REAR_SIGNS],
    ['amp-wont-turn-on', AMP_SIGNS],
    ['amp-goes-off', AMP_AT_TIMES_SIGNS],
  ])('of %s is small enough for a page: 5 kB as it is sent', (_, table) => {
    expect(gzipSync(JSON.stringify(packTable(table))).length).toBeLessThan(5_000);
    expect(unpackTable(packTable(table))).toEqual(table);
  });
});

describe('made evidence', () => {
  const builds: MadeTable = {
    suspects: [
      { verdict: 'fuse', weight: 1, shows: { 'unit-kind': { factory: 1 }, lamp: { off: 1 } } },
      { verdict: 'fuse', weight: 1, shows: { 'unit-kind': { replaced: 1 }, lamp: { on: 1 } } },
      { verdict: 'motor', weight: 1, shows: { 'unit-kind': { factory: 1 } } },
    ],
    sound: {},
  };
  it('holds for rare what the same suspect shows on another build, and counts a build among its own rows only', () => {
    expect(suspectTable(builds, TEXTS).evidence.map(({ shows }) => shows)).toEqual([
      // Half of the fuse’s bikes have a factory unit: on such a bike this row is all of it, and weighs twice.
      { 'unit-kind': { factory: 2, replaced: 0.05 }, lamp: { off: 1, on: 0.05 } },
      { 'unit-kind': { factory: 0.05, replaced: 2 }, lamp: { off: 0.05, on: 1 } },
      { 'unit-kind': { factory: 1 } },
    ]);
  });
  it('is ranked by what it shows on its own build, whatever else is fitted', () => {
    expect(suspectTable(builds, TEXTS).suspects.map(({ signs }) => signs)).toEqual([
      { 'unit-kind': ['factory', 'replaced'], lamp: ['off'] },
      { 'unit-kind': ['replaced', 'factory'], lamp: ['on'] },
      { 'unit-kind': ['factory'] },
    ]);
  });
});

describe('made suspects', () => {
  const { suspects, sound } = suspectTable(PUMP, TEXTS);
  const [fuse, motor, shaft] = suspects;
  it('have as signs every outcome that they can give, likeliest first', () => {
    expect(fuse?.signs).toEqual({ lamp: ['off'], hum: ['silent'] });
    expect(motor?.signs).toEqual({ lamp: ['on'], hum: ['silent', 'hums'] });
    expect(shaft?.signs).toEqual({ lamp: ['on'] });
  });
  it('are moved by history as often as they tell it over how often all do, and never ruled out', () => {
    // Battery: 0.5 of the fuse, over 0.3 of all. Nothing: 0.5 of the fuse, over 0.7 of all.
    expect(fuse?.odds).toEqual({ 'last-change': { battery: 1.7, nothing: 0.71 } });
    expect(motor?.odds).toEqual({ 'last-change': { battery: 0.05, nothing: 1.4 } });
  });
  it('stand beside what a bike without a fault shows', () => expect(sound).toEqual({ lamp: 'on' }));
  it('need a text for each verdict', () => {
    expect(() => suspectTable(PUMP, {})).toThrow('texts must have one for fuse');
  });
});
