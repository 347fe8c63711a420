import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { titleOf } from '../../src/causes/cause.ts';
import { figureText } from '../../src/causes/figure.ts';
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
  'breaker-trips-hot': ['breaker-trips-hot'],
  'ground-lead-too-thin': ['ground-lead-too-thin'],
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
  'amp-channel-rough': ['amp-channel-rough'],
  'highpass-off': ['highpass-off-with-boost'],
  'amp-output-dc': ['amp-output-dc'],
  'amp-too-hot': ['amp-heat-protect'],
  'gain-too-high': ['gain-too-high'],
  'water-inside': ['water-inside'],
  'battery-undercharged': ['battery-undercharged'],
  'battery-worn': ['battery-worn'],
  'battery-cuts-off': ['battery-cuts-off'],
  'charging-too-low': ['regulator-out-of-range@low', 'stator-phase-lost', 'load-above-idle-output'],
  'charging-too-high': ['regulator-out-of-range@high'],
  'charging-ripples': ['regulator-ripple'],
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
