import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { observationsOf } from '../../machines/decision.ts';
import { distortionAtVolume } from '../../machines/distortion-at-volume.ts';
import type { Late, StagedFlow } from '../../machines/machine.ts';
import { noSoundAtAll } from '../../machines/no-sound-at-all.ts';
import { oneSpeakerOrSideDead } from '../../machines/one-speaker-or-side-dead.ts';
import { answered, confirmed } from '../../src/case/change.ts';
import { replay } from '../../src/case/replay.ts';
import { late as ampLate } from '../../src/likelihoods/amp-wont-turn-on.ts';
import { late as distortionLate } from '../../src/likelihoods/distortion-at-volume.ts';
import { late as silentLate } from '../../src/likelihoods/no-sound-at-all.ts';
import { late as oneLate } from '../../src/likelihoods/one-speaker-or-side-dead.ts';
import { type Answers, caseOn, toAnswer } from '../journey.ts';

/* Nobody looks for what he said is not there: by reason alone. */

/** What is named at the end of a case: everything is answered from a list, or with “I can’t”, and no answer is changed. */
function named(flow: StagedFlow, late: Late, answers: Answers): readonly string[] {
  let it = caseOn(flow);
  for (let i = 0; i < 60; i++) {
    const { open } = replay(flow, it, late);
    if (open.kind === 'list') return open.causes;
    if (open.kind === 'cause') return [open.cause, ...open.besides];
    if (open.kind === 'doubt') it = confirmed(it, open.step.id);
    else if (open.kind === 'step') it = answered(it, open.step.id, toAnswer(answers[open.step.id] ?? null));
    else return expect.fail(open.kind);
  }
  return expect.fail('it goes on asking');
}

describe('what is named at the end', () => {
  it('is nothing of an amplifier where there is none', () => {
    const causes = named(noSoundAtAll, silentLate, {
      'unit-kind': 'factory',
      'amps-drive': 'none',
      'last-change': 'front',
      'tried-already': 'nothing',
      'unit-screen': 'normal',
      'source-plays': 'no-change',
      'audio-target': 'no-change',
      'other-source': 'same',
      'tools-at-hand': 'none',
    });
    expect(causes.length).toBeGreaterThan(0);
    for (const cause of ['amp-input-plug-off', 'converter-dead']) expect(causes).not.toContain(cause);
  });
  it('is no profile that overdrives an amplifier where there is none, however much looks like it', () => {
    const causes = named(distortionAtVolume, distortionLate, {
      'unit-kind': 'factory',
      'amps-drive': 'none',
      'harsh-history': 'stopped',
      'last-change': 'opened',
      'where-harsh': 'all',
      'unit-flat': 'no-change',
      'phone-flat': 'no-change',
      'clean-source': 'same',
      'clean-enough': 'quiet',
      'bass-or-all': 'bass',
      'panel-press': 'no-effect',
      'stepped-tone': 'rough',
      'volume-onset': 'middle',
      'engine-compare': 'bass',
      'tools-at-hand': 'none',
    });
    expect(causes).toContain('unit-driven-too-far');
    expect(causes).not.toContain('unaltered-with-amp');
  });
  it('is nothing of a lid for a speaker in the fairing', () => {
    const causes = named(oneSpeakerOrSideDead, oneLate, {
      'which-corner': 'front-left',
      'unit-kind': 'factory',
      'rear-drive': 'unit',
      'front-fed': 'unit',
      'rear-history': 'stopped',
      'when-silent': 'always',
      'last-change': 'nothing',
      'tried-already': 'nothing',
      'how-quiet': 'faint',
      'fader-centre': 'weak',
      'speaker-plug': 'clean',
      'four-corners@front': 'all',
      'tools-at-hand': 'none',
    });
    expect(causes.length).toBeGreaterThan(0);
    for (const cause of ['rear-plug-off', 'lid-contacts-dirty', 'lid-lead-broken', 'second-connector-dirty'])
      expect(causes).not.toContain(cause);
  });
});

describe('what “my bike” knows of two amplifiers', () => {
  const amps = [
    { drives: 'front', turnOn: 'dc' },
    { drives: 'rear', turnOn: 'wire' },
  ] as const;
  it.each([
    ['front', 'front-amp-turn-on'],
    ['rear', 'rear-amp-turn-on'],
  ])('counts only of the %s one, where that is meant', (pair, step) => {
    const it = answered(caseOn(ampWontTurnOn, { amps }), 'which-amp', { option: pair });
    const counted = observationsOf(ampWontTurnOn, replay(ampWontTurnOn, it, ampLate).findings, new Set());
    expect(counted.map((one) => one.step).filter((id) => id.endsWith('-turn-on'))).toEqual([step]);
  });
});

describe('a silent side of which both speakers read open', () => {
  // Each of two breaks is in one corner, and what is told of is the whole side: common practice, no published source.
  const OPEN = { leadsOhm: '0.3', leftOhm: 'OL', rightOhm: '4.1' };
  it('has what is open named first, though nobody spoke of a corner', () => {
    const seen = { 'which-corner': 'left', 'fader-centre': 'no-change', 'four-corners': 'one-side' };
    const first = named(oneSpeakerOrSideDead, oneLate, {
      ...seen,
      'tools-at-hand': 'meter',
      'run-ohms': OPEN,
      'run-ohms@front': OPEN,
      'coil-ohms': { leadsOhm: '0.3', coilOhm: '3.4' },
      'rear-hiss': 'silent',
      'lid-check': 'no-effect',
      'contacts-look': 'clean',
      'second-look': 'none',
      'how-quiet': 'dead',
    })[0];
    expect(['front-plug-bad', 'speaker-wire-open']).toContain(first);
  });
});
