import fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { draftOf, dropDraft, dropDrafts, keepDraft } from '../../src/browser/drafts.ts';
import { answered, noted, repaired } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';

const held = new Map<string, string>();
beforeEach(() => {
  held.clear();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => void held.set(key, text),
    removeItem: (key: string) => void held.delete(key),
  });
});

const begun: Case = { flow: 'no-rear-sound', events: [{ type: 'rig', rig: {} }] };

describe('readings that were typed and not sent', () => {
  it('are there again, step by step, whatever was typed', () => {
    const texts = fc.dictionary(fc.string(), fc.string(), { noNullPrototype: true });
    const steps = fc.dictionary(fc.string(), texts, { noNullPrototype: true });
    fc.assert(
      fc.property(steps, (byStep) => {
        held.clear();
        for (const [step, typed] of Object.entries(byStep)) keepDraft(begun, step, typed);
        for (const [step, typed] of Object.entries(byStep)) expect(draftOf(begun, step)).toEqual(typed);
        for (const step of Object.keys(byStep)) dropDraft(begun, step);
        expect([...held]).toEqual([]);
      }),
    );
  });
  it('stay while other steps are answered and notes are written', () => {
    keepDraft(begun, 'run-ohms', { leftOhm: '3.' });
    const later = noted(answered(begun, 'rear-history', { option: 'stopped' }), 'blue wire');
    expect(draftOf(later, 'run-ohms')).toEqual({ leftOhm: '3.' });
  });
  it('are gone once their step is answered, and those of others are not', () => {
    keepDraft(begun, 'run-ohms', { leftOhm: '3.6' });
    keepDraft(begun, 'rear-pair', { frontV: '2' });
    dropDraft(begun, 'run-ohms');
    expect(draftOf(begun, 'run-ohms')).toEqual({});
    expect(draftOf(begun, 'rear-pair')).toEqual({ frontV: '2' });
  });
  it('are no readings of now after a repair', () => {
    keepDraft(begun, 'run-ohms', { leftOhm: 'OL' });
    const after = repaired(begun, 'coil-open');
    expect(draftOf(after, 'run-ohms')).toEqual({});
    keepDraft(after, 'rear-pair', { frontV: '2' });
    expect(draftOf(after, 'run-ohms')).toEqual({});
    expect(draftOf(after, 'rear-pair')).toEqual({ frontV: '2' });
  });
  it('do not turn up in another case, or in another flow', () => {
    keepDraft(begun, 'run-ohms', { leftOhm: '3.6' });
    expect(draftOf({ ...begun, flow: 'amp-wont-turn-on' }, 'run-ohms')).toEqual({});
    dropDrafts(begun.flow);
    expect(draftOf(begun, 'run-ohms')).toEqual({});
  });
  it.each([
    '{',
    '7',
    '{"repairs":0}',
    '{"repairs":0,"byStep":{"run-ohms":7}}',
    '{"repairs":0,"byStep":{"run-ohms":{"leftOhm":7}}}',
  ])('are none where %s is stored', (text) => {
    held.set('sidestand.draft.no-rear-sound', text);
    expect(draftOf(begun, 'run-ohms')).toEqual({});
  });
  it('are none, and nothing breaks, where nothing can be stored', () => {
    vi.stubGlobal('localStorage', undefined);
    keepDraft(begun, 'run-ohms', { leftOhm: '3.6' });
    dropDraft(begun, 'run-ohms');
    dropDrafts(begun.flow);
    expect(draftOf(begun, 'run-ohms')).toEqual({});
  });
});
