/*
 * What this device keeps. Storage can be forbidden, full, or hold something that an older version or an accident left
 * there. None of that is a programming mistake, so each answers with a result instead of an exception.
 */

export type Stored<T> =
  | { readonly ok: true; readonly value: T | undefined }
  /** The text could not be used. It is kept under `setAside`, or is lost when there was no room for it. */
  | { readonly ok: false; readonly reason: 'damaged'; readonly setAside: string | undefined }
  | { readonly ok: false; readonly reason: 'unavailable' };

export type Saved = { readonly ok: true } | { readonly ok: false; readonly reason: 'unavailable' | 'full' };

type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
/** Asked for at each call: where storage is forbidden, even naming it throws. */
type Device = () => Shelf;

const thisDevice: Device = () => globalThis.localStorage;

/** Where a value that cannot be used is kept, so that nothing is lost and nothing breaks twice. */
export const damagedKey = (key: string): string => `${key}.damaged`;

/**
 * Reads what was saved under a key; `value` is undefined when nothing was.
 * @param accept turns the parsed JSON into the value, or gives undefined when it is not one.
 */
export function readStored<T>(
  key: string,
  accept: (parsed: unknown) => T | undefined,
  device: Device = thisDevice,
): Stored<T> {
  let text: string | null;
  try {
    text = device().getItem(key);
  } catch {
    return { ok: false, reason: 'unavailable' };
  }
  if (text === null) return { ok: true, value: undefined };
  const value = accept(parsedOrUndefined(text));
  if (value !== undefined) return { ok: true, value };
  return { ok: false, reason: 'damaged', setAside: setAside(key, text, device) };
}

export function writeStored(key: string, value: unknown, device: Device = thisDevice): Saved {
  let shelf: Shelf;
  try {
    shelf = device();
  } catch {
    return { ok: false, reason: 'unavailable' };
  }
  try {
    shelf.setItem(key, JSON.stringify(value));
    return { ok: true };
  } catch (error) {
    return { ok: false, reason: isQuota(error) ? 'full' : 'unavailable' };
  }
}

export function removeStored(key: string, device: Device = thisDevice): Saved {
  try {
    device().removeItem(key);
    return { ok: true };
  } catch {
    return { ok: false, reason: 'unavailable' };
  }
}

/** What to tell a person when saving failed. */
export const whyNotSaved = (saved: Saved): string | undefined => {
  if (saved.ok) return undefined;
  return saved.reason === 'full'
    ? 'This browser has no room left, so nothing is saved. Keep this page open, or save a file.'
    : 'This browser does not let the page save anything. Keep this page open, or save a file.';
};

function parsedOrUndefined(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function setAside(key: string, text: string, device: Device): string | undefined {
  try {
    device().setItem(damagedKey(key), text);
    device().removeItem(key);
    return damagedKey(key);
  } catch {
    return undefined;
  }
}

const isQuota = (error: unknown): boolean =>
  error instanceof DOMException && (error.name === 'QuotaExceededError' || error.name === 'NS_ERROR_DOM_QUOTA_REACHED');
