import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CaseEvent } from '../../src/case/events.ts';
import { MOST_EVENTS, withinLimits } from '../../src/case/limits.ts';

const limited = (events: readonly CaseEvent[]) => withinLimits(events, ({ type }) => type === 'rig');
const note = (i: number): CaseEvent => ({ type: 'note', text: String(i) });
const bike = (unitKind: 'factory' | 'replaced'): CaseEvent => ({ type: 'rig', rig: { unitKind } });
const notes = (count: number) => Array.from({ length: count }, (_, i) => note(i));

describe('withinLimits', () => {
  it('keeps a case of the usual size as it is', () => {
    const events = [bike('factory'), ...notes(MOST_EVENTS - 1)];
    expect(limited(events)).toEqual({ events, refused: [] });
  });
  it('keeps the latest of too many, on the bike that they stood on, and says how many went', () => {
    const events = [bike('replaced'), note(-1), bike('factory'), ...notes(MOST_EVENTS)];
    expect(limited(events)).toEqual({
      events: [bike('factory'), ...notes(MOST_EVENTS).slice(1)],
      refused: ['This case has 403 entries, more than any real one. The oldest 3 were left out.'],
    });
  });
  it('never keeps more than the limit, loses no bike, and keeps nothing that was not there', () => {
    const anyEvents = fc.array(fc.constantFrom(note(1), note(2), bike('factory'), bike('replaced')), {
      minLength: MOST_EVENTS - 2,
      maxLength: MOST_EVENTS + 30,
    });
    const bikeOf = (events: readonly CaseEvent[]) => events.findLast((event) => event.type === 'rig');
    fc.assert(
      fc.property(anyEvents, (events) => {
        const kept = limited(events);
        expect(kept.events.length).toBeLessThanOrEqual(MOST_EVENTS);
        expect(bikeOf(kept.events)).toEqual(bikeOf(events));
        expect(kept.events.slice(1)).toEqual(events.slice(1 - kept.events.length));
        expect(limited(kept.events)).toEqual({ events: kept.events, refused: [] });
        expect(kept.refused.length > 0).toBe(events.length > MOST_EVENTS);
      }),
      { numRuns: 50 },
    );
  });
});
