import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../../machines/amp-wont-turn-on.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { findingsOver } from '../../../src/steps/outcome.ts';
import { AMP_TEXTS, ampTable } from '../../../src/verdicts/amp/suspects.ts';
import { rank, stillPossible } from '../../../src/verdicts/suspects.ts';
import { type Short, toAnswer } from '../../journey.ts';
import { describeSuspects, unsuspected } from '../suspects-law.ts';

/** The table of suspects against the flow that it is ranked in. What each shows is held to the circuit elsewhere. */
const { suspects } = ampTable({ rig: {}, facts: {} });
describeSuspects(ampWontTurnOn, suspects, AMP_TEXTS);

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
