import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../../machines/amp-wont-turn-on.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { findingsOver } from '../../../src/steps/outcome.ts';
import { AMP_SUSPECTS } from '../../../src/verdicts/amp/suspects.ts';
import { rank, stillPossible } from '../../../src/verdicts/suspects.ts';
import { type Short, toAnswer } from '../../journey.ts';
import { describeSuspects, unsuspected } from '../suspects-law.ts';

/** The table of signs against the flow that it is ranked in. Signs themselves: common practice, no published source. */
describeSuspects(ampWontTurnOn, AMP_SUSPECTS);

const left = (rig: Rig, answers: Readonly<Record<string, Short>>) => {
  const facts = Object.fromEntries(Object.entries(answers).map(([step, short]) => [step, toAnswer(short)]));
  const findings = findingsOver(ampWontTurnOn.steps)({ rig, facts });
  return stillPossible(rank(AMP_SUSPECTS, findings)).map(({ suspect }) => suspect.verdict);
};

describe('the suspects of an amplifier that stays off', () => {
  it('cover every verdict that stands for a fault, apart from the two that name a pair of them', () =>
    expect(unsuspected(ampWontTurnOn, AMP_SUSPECTS)).toEqual(['fuse-opens-again', 'run-trips-it']));

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
    const onlyProtecting = ['speaker-wire-to-frame', 'speaker-pair-shorted', 'amp-load-too-low', 'amp-output-dc'];
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
