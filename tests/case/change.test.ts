import { describe, expect, it } from 'vitest';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { adopt } from '../../src/case/adopt.ts';
import {
  answered,
  back,
  confirmed,
  doneOf,
  handedOver,
  noted,
  onBike,
  repaired,
  revised,
  withDone,
} from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { caseOn, give, stand } from '../journey.ts';

const begun = caseOn(noRearSound, { batteryAh: 20 });
const SILENT_REAR = { frontV: '2.00', leftV: '0', rightV: '0' };
const ridden = give(begun, {
  'unit-kind': 'factory',
  'rear-drive': 'unit',
  'rear-history': 'never',
  'last-change': 'fitted',
  'fader-centre': 'no-change',
  'rear-control': 'none',
  'lid-check': 'no-effect',
  'tools-at-hand': 'meter',
  'rear-rating': '4',
  'run-ohms': { leadsOhm: '0.2', leftOhm: '3.6', rightOhm: '3.7' },
  'wire-to-frame': { lowestOhm: 'OL' },
  'meter-digit': '0.01',
  'rear-pair': SILENT_REAR,
  'delivered-with': 'two',
});

describe('a change of a case', () => {
  it('adds one event to a new case and leaves the old one as it was', () => {
    const before = structuredClone(begun);
    for (const next of [
      answered(begun, 'fader-centre', { cannot: true }),
      revised(begun, 'fader-centre', { cannot: true }),
      confirmed(begun, 'fader-centre'),
      repaired(begun, 'coil-open'),
      noted(begun, 'a note'),
      onBike(begun, {}),
    ]) {
      expect(next.events).toHaveLength(2);
      expect(next.events[0]).toBe(begun.events[0]);
      expect(back(next)).toEqual(next.events.at(-1)?.type === 'note' ? next : begun);
    }
    expect(begun).toEqual(before);
  });
});

describe('an answer that was checked again', () => {
  const checkedIn = (it: Case) => [...stand(noRearSound, it).checked];

  it('stays as it was, with all that was given under it', () => {
    const kept = confirmed(ridden, 'lid-check');
    expect(stand(noRearSound, kept).facts).toEqual(stand(noRearSound, ridden).facts);
    expect(checkedIn(kept)).toEqual(['lid-check']);
  });
  it('is one that was changed, too', () =>
    expect(checkedIn(revised(ridden, 'lid-check', { option: 'reacts' }))).toEqual(['lid-check']));
  it('is to be checked anew once a repair has made it stale', () => {
    const kept = confirmed(confirmed(ridden, 'lid-check'), 'rear-history');
    expect(checkedIn(repaired(kept, 'rear-channels-disabled'))).toEqual(['rear-history']);
  });
  it('is not asked about again after a hand-over', () => {
    const kept = confirmed(ridden, 'rear-history');
    expect(checkedIn(handedOver(kept, stand(noRearSound, kept), noRearSound.id))).toEqual(['rear-history']);
  });
});

describe('a case handed over to another flow', () => {
  const noteTaken = noted(ridden, 'ask for the invoice');
  const standing = stand(noRearSound, noteTaken);

  it('begins with the bike that it stands on, keeps what was learnt as answers, and ends with the hand-over', () => {
    const { flow, events } = handedOver(noteTaken, standing, 'is-a-reflash-needed');
    expect(flow).toBe('is-a-reflash-needed');
    expect(events[0]).toEqual({
      type: 'rig',
      rig: { batteryAh: 20 },
    });
    expect(events).toContainEqual({ type: 'answer', step: 'unit-kind', answer: { option: 'factory' } });
    expect(events.at(-1)).toEqual({ type: 'handOver', flow: 'is-a-reflash-needed', by: ['no-rear-sound'] });
    expect(events.at(-2)).toEqual({ type: 'note', text: 'ask for the invoice' });
  });
  it('brings readings that the other flow would take again', () => {
    const { case: it_ } = adopt(whatIsInTheHeadUnit, handedOver(noteTaken, standing, whatIsInTheHeadUnit.id));
    const there = stand(whatIsInTheHeadUnit, it_);
    expect('step' in there.open && there.open.step.id).toBe('tones-off');
    const after = stand(whatIsInTheHeadUnit, give(it_, { 'tones-off': null }));
    expect(after.findings.outcome('rear-pair')).toBe('none');
    expect('step' in after.open && after.open.step.id).toBe('top-step');
  });
  it('lets the plan skip which head unit it is', () => {
    const { case: it_ } = adopt(isAReflashNeeded, handedOver(noteTaken, standing, isAReflashNeeded.id));
    const there = stand(isAReflashNeeded, give(it_, { 'planned-change': 'front-only', 'wish-mirroring': 'no' }));
    expect('step' in there.open && there.open.step.id).toBe('amp-count');
    expect(there.notes).toEqual(['ask for the invoice']);
  });
  it('leaves behind what a repair made stale', () => {
    const mended = repaired(ridden, 'rear-channels-disabled');
    const { events } = handedOver(mended, stand(noRearSound, mended), isAReflashNeeded.id);
    const steps = events.flatMap((event) => (event.type === 'answer' ? [event.step] : []));
    expect(steps).toEqual([
      'unit-kind',
      'rear-drive',
      'rear-history',
      'last-change',
      'tools-at-hand',
      'rear-rating',
      'run-ohms',
      'wire-to-frame',
      'meter-digit',
      'delivered-with',
    ]);
  });
});

describe('the lines of a fix that are done', () => {
  const DONE = withDone(withDone(ridden, 'coil-open', ['a']), 'coil-open', ['a', 'b']);
  it('are kept once for each fix, whatever was ticked on the way', () => {
    expect(doneOf(DONE, 'coil-open')).toEqual(['a', 'b']);
    expect(doneOf(DONE, 'rear-plug-off')).toEqual([]);
    expect(DONE.events.filter(({ type }) => type === 'done')).toHaveLength(1);
  });
  it('are gone once the repair did not help, and Back does not take them for an answer', () => {
    expect(doneOf(repaired(DONE, 'coil-open'), 'coil-open')).toEqual([]);
    expect(doneOf(back(DONE), 'coil-open')).toEqual(['a', 'b']);
    expect(back(DONE).events.filter(({ type }) => type === 'answer')).toHaveLength(
      ridden.events.filter(({ type }) => type === 'answer').length - 1,
    );
  });
});
