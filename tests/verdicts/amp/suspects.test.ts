import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../../machines/amp-wont-turn-on.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { findingsOver } from '../../../src/steps/outcome.ts';
import { AMP_AT_TIMES_TEXTS, AMP_TEXTS, ampTable } from '../../../src/verdicts/amp/suspects.ts';
import { rank, stillPossible } from '../../../src/verdicts/suspects.ts';
import { type Short, toAnswer } from '../../journey.ts';
import { describeSuspects, unsuspected } from '../suspects-law.ts';

/** The table of suspects against the flow that it is ranked in. What each shows is held to the circuit elsewhere. */
const { suspects } = ampTable({ rig: {}, facts: {} });
describeSuspects(ampWontTurnOn, suspects, AMP_TEXTS);

const AT_TIMES: Readonly<Record<string, Short>> = { 'amp-light': 'normal', 'amp-goes-off': 'loud' };
const atTimes = ampTable({ rig: {}, facts: { 'amp-light': { option: 'normal' } } }).suspects;
describeSuspects(ampWontTurnOn, atTimes, AMP_AT_TIMES_TEXTS);

const left = (rig: Rig, answers: Readonly<Record<string, Short>>) => {
  const facts = Object.fromEntries(Object.entries(answers).map(([step, short]) => [step, toAnswer(short)]));
  const findings = findingsOver(ampWontTurnOn.steps)({ rig, facts });
  return stillPossible(rank(ampTable(findings).suspects, findings)).map(({ suspect }) => suspect.verdict);
};

describe('the suspects of an amplifier that stays off', () => {
  it('cover every verdict that stands for a fault, apart from pairs of them and from faults that do not keep it off', () =>
    expect(unsuspected(ampWontTurnOn, suspects).toSorted()).toEqual([
      'amp-load-too-low',
      'battery-low',
      'fuse-opens-again',
      'head-unit-dark',
      'plus-lead-too-thin',
      'regulator-out-of-range',
      'remote-on-permanent',
      'run-trips-it',
      'sense-sleeps-in-quiet',
    ]));

  it('leave no remote wire among those of an amplifier that listens, and no listening among those of one on a wire', () => {
    const onWire = left(EXAMPLE_RIGS['frame-fairing'], { 'amp-light': 'off' });
    expect(onWire).toContain('remote-wire-open');
    expect(onWire).not.toContain('sense-starved-by-profile');
    const rear = left(EXAMPLE_RIGS.trunk, { 'which-amp': 'rear', 'amp-light': 'off' });
    expect(rear).toContain('sense-starved-by-profile');
    expect(rear).not.toContain('remote-wire-open');
  });
  it('follow the amplifier that the case is about where a bike has two', () => {
    const front = left(EXAMPLE_RIGS.trunk, { 'which-amp': 'front', 'amp-light': 'off' });
    expect(front).toContain('remote-wire-open');
    expect(front).not.toContain('sense-starved-by-profile');
  });
  it('think of speakers, heat and the output stage only when the fault lamp is on', () => {
    const rig = EXAMPLE_RIGS['frame-fairing'];
    const onlyProtecting = ['speaker-wire-to-frame', 'speaker-pair-shorted', 'amp-output-dc'];
    for (const verdict of onlyProtecting) {
      expect(left(rig, { 'amp-light': 'fault' })).toContain(verdict);
      expect(left(rig, { 'amp-light': 'off' })).not.toContain(verdict);
    }
  });
  it('put the fuse and the remote wire first on a wire, and too little sound first after a reflash of one that listens', () => {
    const likeliest = (rig: Rig, answers: Readonly<Record<string, Short>>) => left(rig, answers).slice(0, 2);
    expect(likeliest(EXAMPLE_RIGS['frame-fairing'], { 'amp-light': 'off' }).toSorted()).toEqual([
      'main-fuse-open',
      'remote-wire-open',
    ]);
    const asleep = { 'which-amp': 'rear', 'amp-light': 'off', 'last-change': 'reflash' };
    expect(likeliest(EXAMPLE_RIGS.trunk, asleep)[0]).toBe('sense-starved-by-profile');
  });
});

describe('the suspects of an amplifier that is on and goes off at times', () => {
  const BY_WIRE = EXAMPLE_RIGS['frame-fairing'];
  const off = suspects.map(({ verdict }) => verdict);

  it('are others than those of one that stays off, and its lamp speaks against none of them', () => {
    const now = left(BY_WIRE, { 'amp-light': 'normal' });
    expect(now).toEqual(expect.arrayContaining(['fuse-holder-resistive', 'amp-load-too-low', 'battery-low']));
    for (const dead of ['main-fuse-open', 'amp-dead', 'remote-source-dead']) {
      expect(off).toContain(dead);
      expect(atTimes.map(({ verdict }) => verdict)).not.toContain(dead);
    }
    expect(left(BY_WIRE, { 'amp-light': null, 'amp-signs': 'alive' }).toSorted()).toEqual(now.toSorted());
    const tripping = left(BY_WIRE, { ...AT_TIMES, 'amp-light': 'fault' });
    expect(tripping.toSorted()).toEqual(left(BY_WIRE, AT_TIMES).toSorted());
    expect(tripping[0]).toBe('amp-load-too-low');
  });
  // What makes an amplifier go off when loud, on bumps, hot and in quiet passages: common practice, no published source.
  it.each([
    ['loud', ['plus-lead-too-thin', 'amp-ground-resistive', 'battery-low', 'remote-volts-low', 'amp-load-too-low']],
    ['bumps', ['fuse-holder-resistive', 'battery-lug-loose', 'remote-wire-open', 'speaker-wire-to-frame']],
    ['hot', ['amp-heat-protect']],
    ['running', ['regulator-out-of-range']],
    ['quiet', ['turn-on-mode-wrong']],
  ])('are, %s, %j', (when, expected) =>
    expect(left({ ...BY_WIRE, unitKind: 'replaced' }, { ...AT_TIMES, 'amp-goes-off': when })).toEqual(
      expect.arrayContaining(expected),
    ),
  );
  it('are none who needs something that this bike does not have', () => {
    const onBumps = { ...AT_TIMES, 'amp-goes-off': 'bumps' };
    expect(left(BY_WIRE, onBumps)).not.toContain('amp-input-plug-off');
    const rear = left(EXAMPLE_RIGS.trunk, { 'which-amp': 'rear', ...onBumps });
    expect(rear).toContain('amp-input-plug-off');
    expect(rear).not.toContain('remote-wire-open');
  });
  it('are those of one that stays off again once it is known to be off for good', () =>
    expect(left(BY_WIRE, { 'amp-light': 'fault', 'amp-goes-off': 'always' })).toContain('speaker-pair-shorted'));
});
