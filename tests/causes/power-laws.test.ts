import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Cause, type Remedy, titleOf } from '../../src/causes/cause.ts';
import { figureText } from '../../src/causes/figure.ts';
import type { RepairAction } from '../../src/causes/repair-action.ts';
import type { CautionId } from '../../src/steps/cautions.ts';
import type { StepId } from '../../src/steps/ids.ts';
import { type Findings, findingsFrom, outcomeNamed } from '../../src/steps/outcome.ts';
import { anyRig } from '../rig/any-rig.ts';
import { found, KNOWN, linesOf, TWO_AMPS, UNKNOWN } from './found.ts';
import { POWER_CAUSES } from './power-causes.ts';

const RIGS = { 'a known bike': KNOWN, 'a bike with two amplifiers': TWO_AMPS, 'a bike nobody knows': UNKNOWN };
const ROWS = POWER_CAUSES.flatMap((cause) =>
  Object.entries(RIGS).map(([name, rig]) => ({ id: cause.id, name, cause, f: found(rig) })),
);

/** What each cause stands for. A fault that moves from one to another moves here, too. */
const OWNED: Readonly<Record<string, readonly string[]>> = {
  'main-fuse-open': ['main-fuse-open'],
  'fuse-holder-bad': ['fuse-holder-resistive', 'fuse-holder-open'],
  'plus-lead-too-thin': ['plus-lead-too-thin', 'plus-lead-clad'],
  'plus-lead-broken': ['plus-lead-broken'],
  'plus-lead-chafed': ['wire-chafed@plus-lead'],
  'battery-lug-loose': ['battery-lug-loose'],
  'amp-terminal-loose': ['amp-terminal-loose'],
  'amp-ground-open': ['amp-ground-open'],
  'amp-ground-resistive': ['amp-ground-resistive'],
  'shared-ground-screw': ['shared-ground-screw'],
  'both-leads-bad': ['both-leads-bad'],
  'remote-wire-open': ['remote-wire-open'],
  'remote-source-dead': ['remote-source-dead'],
  'remote-volts-low': ['remote-volts-low'],
  'remote-on-permanent': ['remote-on-permanent'],
  'adapter-without-remote': ['replaced-unit-adapter-gap@remote'],
  'turn-on-mode-wrong': ['turn-on-mode-wrong'],
  'unit-feed-missing': ['unit-feed-missing', 'unit-fuse-open'],
  'amp-body-fuse-open': ['amp-body-fuse-open'],
  'amp-dead': ['amp-dead@'],
  'amp-shorted-inside': ['amp-dead@internal-short'],
  'amp-channel-dead': ['amp-channel-dead'],
  'amp-output-dc': ['amp-output-dc'],
  'amp-too-hot': ['amp-heat-protect'],
  'gain-too-high': ['gain-too-high'],
  'water-inside': ['water-inside'],
  'battery-undercharged': ['battery-undercharged'],
  'battery-worn': ['battery-worn'],
  'battery-cuts-off': ['battery-cuts-off'],
  'charging-too-low': ['regulator-out-of-range@low', 'stator-phase-lost', 'load-above-idle-output'],
  'charging-too-high': ['regulator-out-of-range@high'],
};

describe('the causes of the power side', () => {
  it('stand for these faults', () => {
    expect(Object.fromEntries(POWER_CAUSES.map(({ id, faults }) => [id, faults]))).toEqual(OWNED);
  });
  it.each(ROWS)(
    '$id says on $name what to do, with which numbers, and how one knows that it is cured',
    ({ cause, f }) => {
      const remedy = cause.remedy(f);
      const lines = [titleOf(cause, f), ...linesOf(remedy), ...remedy.numbers.map(figureText)];
      for (const line of lines) expect(line).not.toMatch(/undefined|NaN|Infinity|null/);
      expect(remedy.repair.length).toBeGreaterThan(0);
      expect(remedy.fix.length).toBeGreaterThan(1);
      const ids = remedy.numbers.map(({ id }) => id);
      expect(ids).toEqual([...new Set(ids)]);
    },
  );
  it.each(POWER_CAUSES)('$id says nothing of how sure it is, and never sells an amplifier', (cause) => {
    for (const rig of Object.values(RIGS)) {
      const { fix, parts, what } = cause.remedy(found(rig));
      for (const line of [what, ...fix, ...parts]) expect(line).not.toMatch(/\b(proved|likely|may also|short list)\b/i);
      for (const line of [...fix, ...parts]) expect(line).not.toMatch(/replace (it|the amplifier)|a new amplifier/i);
    }
  });
  it('work on any bike at all', () => {
    fc.assert(
      fc.property(anyRig, fc.constantFrom(...POWER_CAUSES), (rig, cause) => {
        const remedy = cause.remedy(found(rig));
        for (const figure of remedy.numbers) expect(figureText(figure)).not.toMatch(/NaN/);
      }),
      { numRuns: 2000 },
    );
  });
  it('name the amplifier where there are two, and only there', () => {
    const named = POWER_CAUSES.filter(({ title }) => typeof title !== 'string');
    expect(named.length).toBeGreaterThan(20);
    for (const cause of named) {
      expect(titleOf(cause, found(TWO_AMPS))).toMatch(/rear amplifier/i);
      expect(titleOf(cause, found(TWO_AMPS, {}, { 'which-amp': { option: 'front' } }))).toMatch(/front amplifier/i);
      expect(titleOf(cause, found(KNOWN))).not.toMatch(/(rear|front) amplifier/i);
    }
  });
});

/* Harm and its warning. Which goes with which: common practice, no published source. */

const WORDS: readonly (readonly [words: RegExp, caution: CautionId])[] = [
  [/\b55 W lamp|21 to 55 W lamp/, 'lamp-hot'],
  [/3000 rpm|engine (on|running)/i, 'outdoors'],
  [/\b(80|400) Hz tone/, 'loud-tone'],
  [/across (one|each|its) outputs?\b/i, 'amp-output'],
  [/battery minus off|minus rings off|minus on\b/i, 'minus-first'],
  [/new fuse|a \d+ A fuse|fuse goes|1 A fuse at its start/i, 'fuse'],
  [/\bkey off\b/i, 'key-off'],
  [/jumper/, 'jumper'],
  [/head unit’s remote output|its plug apart: a pin/i, 'data'],
  [/with a charger|its own charger|charge the battery/i, 'battery-gas'],
];
/** Either is a warning to switch off first. */
const COVERS: Readonly<Partial<Record<CautionId, readonly CautionId[]>>> = {
  'key-off': ['key-off', 'minus-first', 'ohms-dead', 'amp-output', 'battery-gas'],
  fuse: ['fuse', 'data', 'temporary-lead'],
};
const DONE: Readonly<Partial<Record<RepairAction['do'], readonly CautionId[]>>> = {
  'renew-lead': ['minus-first'],
  'renew-holder': ['minus-first', 'fuse'],
  'free-wire': ['minus-first', 'fuse'],
  'renew-fuse': ['fuse'],
  'own-ground': ['minus-first', 'temporary-lead'],
  'tighten-joint': ['minus-first'],
  'charge-battery': ['battery-gas'],
  'replace-battery': ['battery-gas', 'minus-first'],
  'repair-charging': ['outdoors', 'hot'],
  'set-gain': ['amp-output', 'loud-tone'],
  'repair-amp': ['warranty'],
  'dry-amp': ['minus-first'],
  'cool-amp': ['hot'],
};

/** The same findings of somebody who has a meter: only he is shown what is proved by one. */
const byMeter = (f: Findings): Findings =>
  findingsFrom(
    f,
    (id) => (id === 'tools-at-hand' ? 'meter' : outcomeNamed(f, id)),
    (id) => f.values(id as StepId),
  );

const missing = (remedy: Remedy, hasMeter: boolean): readonly string[] => {
  const has = (caution: CautionId) => (COVERS[caution] ?? [caution]).some((one) => remedy.cautions.includes(one));
  const said = [...remedy.fix, remedy.proofOfCure.byEar, (hasMeter && remedy.proofOfCure.byMeter) || ''];
  return [
    ...WORDS.filter(([words, caution]) => said.some((line) => words.test(line)) && !has(caution)).map(
      ([words, caution]) => `${caution} for ${words}`,
    ),
    ...remedy.repair.flatMap(({ do: done }) => (DONE[done] ?? []).filter((caution) => !has(caution))),
  ];
};

describe('the cautions of a remedy', () => {
  it.each(ROWS)('of $id on $name cover what is said and done', ({ cause, f }) => {
    expect(missing(cause.remedy(f), false)).toEqual([]);
    expect(missing(cause.remedy(byMeter(f)), true)).toEqual([]);
  });
  it('would be missed if any of them went', () => {
    const without = (remedy: Remedy): Remedy => ({ ...remedy, cautions: [] });
    const silent = (cause: Cause) => missing(without(cause.remedy(byMeter(found(KNOWN)))), true).length === 0;
    expect(POWER_CAUSES.filter(silent).map(({ id }) => id)).toEqual([]);
  });
});
