import { beforeEach, describe, expect, it, vi } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { goOnWithOlder, isOvertaken, save, takeBackAside, takeNewer } from '../../src/browser/case-store.ts';
import { toText } from '../../src/case/case-text.ts';
import { answered } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';

let room = Number.POSITIVE_INFINITY;
beforeEach(() => {
  const held = new Map<string, string>();
  room = Number.POSITIVE_INFINITY;
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new DOMException('no room', 'QuotaExceededError');
      held.set(key, text);
    },
    removeItem: (key: string) => void held.delete(key),
  });
});

const { id } = noRearSound;
const fresh: Case = { flow: id, events: [{ type: 'rig', rig: {} }] };
const older = answered(fresh, 'unit-kind', { option: 'factory' });
const newer = answered(older, 'rear-drive', { option: 'unit' });

describe('two tabs on one case', () => {
  it('are told apart by what is kept: the one that kept it last goes on', () => {
    save(older);
    expect(isOvertaken(id, toText(older))).toBe(false);
    save(newer);
    expect(isOvertaken(id, toText(older))).toBe(true);
    expect(isOvertaken(id, toText(newer))).toBe(false);
  });
  it('are no matter where nothing is kept, or nothing was kept yet', () => {
    expect(isOvertaken(id, toText(older))).toBe(false);
    save(newer);
    expect(isOvertaken(id, undefined)).toBe(false);
    vi.stubGlobal('localStorage', undefined);
    expect(isOvertaken(id, toText(older))).toBe(false);
  });
  it('agree again when the older takes the newer case', () => {
    save(newer);
    expect(takeNewer(noRearSound)).toMatchObject({ case: newer, notices: [] });
  });
  it('lose neither when the older goes on with its own: the newer is kept aside', () => {
    save(newer);
    expect(goOnWithOlder(noRearSound, older)).toMatchObject({ case: older, keptAside: true });
    expect(takeBackAside(noRearSound, older)?.case).toEqual(newer);
  });
  it('leave the newer where it is when there is no room for both', () => {
    save(newer);
    room = 0;
    expect(goOnWithOlder(noRearSound, older)).toEqual({ noRoom: expect.stringMatching(/no room/) });
    expect(takeNewer(noRearSound).case).toEqual(newer);
  });
});
