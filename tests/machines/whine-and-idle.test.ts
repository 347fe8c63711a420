import { describe, expect, it } from 'vitest';
import { eqChangesWhenEngineStarts } from '../../machines/eq-changes-when-engine-starts.ts';
import { confirmed } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { replay } from '../../src/case/replay.ts';
import { late } from '../../src/likelihoods/eq-changes-when-engine-starts.ts';
import { type Answers, caseOn, give, openIn } from '../journey.ts';

/*
 * What follows the engine and is no matter of tone: a whine, and sound that sags at idle. Which of battery, charging,
 * ground and converter it is, people of the trade tell by what stops it. Common practice, no published source.
 */

const flow = eqChangesWhenEngineStarts;
const TOLD: Answers = {
  'unit-kind': 'factory',
  'amps-drive': 'all',
  'tone-history': 'stopped',
  'was-reflashed': 'yes',
  'last-change': 'nothing',
  'where-changes': 'stand',
};
const told = (answers: Answers): Case => give(caseOn(flow), { ...TOLD, ...answers });
/** With everything that is doubted looked at again, and what is still asked left unanswered. */
function end(it: Case, left = 20): string {
  const { open } = replay(flow, it, late);
  if (left === 0) return 'no end';
  if (open.kind === 'doubt') return end(confirmed(it, open.step.id), left - 1);
  return open.kind === 'step' ? end(give(it, { [open.step.id]: null }), left - 1) : openIn({ open });
}
const WHINE = { 'engine-compare': 'noise', 'loud-compare': 'clean', 'speed-off': 'none' } as const;

describe('sound that sags at idle', () => {
  const SAGS: Answers = { 'engine-compare': 'same', 'loud-compare': 'ugly', 'speed-off': 'no-change' };
  it('and is right with the heated gear off is the charging, without any tool', () => {
    const it_ = told({ ...SAGS, 'revs-compare': 'gear', 'starter-turns': 'slow', 'tools-at-hand': 'none' });
    expect(end(it_)).toBe('charging-too-low');
  });
  it('and is right with the revs up is the charging where idle reads too low, and the battery where it does not', () => {
    const measured = (idleV: string): Answers => ({
      ...SAGS,
      'revs-compare': 'revs',
      'starter-turns': 'slow',
      'tools-at-hand': 'meter',
      'charging-volts': { idleV, fastV: '14.1' },
    });
    expect(end(told(measured('11.7')))).toBe('charging-too-low');
    expect(end(told(measured('13.4')))).toMatch(/^battery-worn/);
  });
});

describe('a whine that stays with every lead off', () => {
  const STAYS: Answers = { ...WHINE, 'noise-where': 'stays' };
  it('is looked for at the battery before anything is concluded', () => {
    const it_ = told({ ...STAYS, 'tools-at-hand': 'meter' });
    expect(replay(flow, it_, late).decided?.decision.kind).toBe('ask');
  });
  it('is the battery where it cranks slowly and smooths little, although the charging is right', () => {
    const it_ = told({
      ...STAYS,
      'starter-turns': 'slow',
      'tools-at-hand': 'meter',
      'battery-ripple': { rippleV: '0.35' },
      'charging-volts': { idleV: '13.5', fastV: '14.2' },
    });
    expect(end(it_)).toMatch(/^battery-worn/);
  });
  it('is the ground of the amplifier where the battery is smooth', () => {
    const it_ = told({
      ...STAYS,
      'starter-turns': 'brisk',
      'tools-at-hand': 'meter',
      'battery-ripple': { rippleV: '0.1' },
      'charging-volts': { idleV: '13.5', fastV: '14.2' },
    });
    expect(end(it_)).toMatch(/^amp-ground-resistive/);
  });
});

describe('a whine that goes with the signal plug off', () => {
  it('is asked whether a converter is on the way, and not where speaker wires are known to feed the amplifier', () => {
    const asked = (rig: Case['events'][number] & { type: 'rig' }, answers: Answers) => {
      let it_: Case = give({ flow: flow.id, events: [rig] }, { ...TOLD, ...WHINE, 'noise-where': 'plug', ...answers });
      for (let i = 0; i < 20; i++) {
        const { open } = replay(flow, it_, late);
        if (open.kind === 'step' && open.step.id === 'line-converter') return true;
        if (open.kind === 'doubt') it_ = confirmed(it_, open.step.id);
        else if (open.kind === 'step') it_ = give(it_, { [open.step.id]: null });
        else return false;
      }
      return false;
    };
    expect(asked({ type: 'rig', rig: {} }, {})).toBe(true);
    expect(asked({ type: 'rig', rig: { amps: [{ drives: 'both', input: 'speaker' }] } }, {})).toBe(false);
  });
});
