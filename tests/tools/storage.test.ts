import { describe, expect, it } from 'vitest';
import { damagedKey, readStored, removeStored, whyNotSaved, writeStored } from '../../src/browser/storage.ts';

const asText = (value: unknown) => (typeof value === 'string' ? value : undefined);

/** A device whose shelf holds what is given. */
function shelf(held: Record<string, string> = {}, full = false) {
  const at = new Map(Object.entries(held));
  return {
    at,
    device: () => ({
      getItem: (key: string) => at.get(key) ?? null,
      setItem: (key: string, text: string) => {
        if (full) throw new DOMException('no room', 'QuotaExceededError');
        at.set(key, text);
      },
      removeItem: (key: string) => void at.delete(key),
    }),
  };
}
const forbidden = () => {
  throw new DOMException('no', 'SecurityError');
};

describe('readStored', () => {
  it('gives back what was written', () => {
    const { device } = shelf();
    expect(writeStored('k', 'phone', device)).toEqual({ ok: true });
    expect(readStored('k', asText, device)).toEqual({ ok: true, value: 'phone' });
  });
  it('gives nothing when nothing was written', () => {
    expect(readStored('k', asText, shelf().device)).toEqual({ ok: true, value: undefined });
  });
  it.each(['{"a":', '12', 'null'])('sets %s aside, so that nothing is lost and nothing breaks twice', (text) => {
    const { at, device } = shelf({ k: text });
    expect(readStored('k', asText, device)).toEqual({ ok: false, reason: 'damaged', setAside: 'k.damaged' });
    expect(Object.fromEntries(at)).toEqual({ [damagedKey('k')]: text });
    expect(readStored('k', asText, device)).toEqual({ ok: true, value: undefined });
  });
  it('says that it is damaged even when there is no room to set it aside', () => {
    const { at, device } = shelf({ k: '{' }, true);
    expect(readStored('k', asText, device)).toEqual({ ok: false, reason: 'damaged', setAside: undefined });
    expect(at.get('k')).toBe('{');
  });
  it('answers where storage is forbidden', () => {
    expect(readStored('k', asText, forbidden)).toEqual({ ok: false, reason: 'unavailable' });
  });
});

describe('writeStored', () => {
  it('says that there is no room', () => {
    expect(writeStored('k', 1, shelf({}, true).device)).toEqual({ ok: false, reason: 'full' });
  });
  it('says that storage is forbidden', () => {
    expect(writeStored('k', 1, forbidden)).toEqual({ ok: false, reason: 'unavailable' });
  });
});

describe('removeStored', () => {
  it('forgets a value', () => {
    const { at, device } = shelf({ k: '1' });
    expect(removeStored('k', device)).toEqual({ ok: true });
    expect(at.size).toBe(0);
  });
});

describe('whyNotSaved', () => {
  it('has nothing to say about what was saved, and another sentence for each reason', () => {
    expect(whyNotSaved({ ok: true })).toBeUndefined();
    expect(whyNotSaved({ ok: false, reason: 'full' })).toMatch(/no room/);
    expect(whyNotSaved({ ok: false, reason: 'unavailable' })).toMatch(/does not let/);
  });
});
