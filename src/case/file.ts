import { fromText, toText } from './case-text.ts';
import type { Case } from './events.ts';
import { MOST_BYTES } from './limits.ts';
import { toLink } from './link.ts';

/* A case as a file: its plain text, for whoever keeps it, sends it by other ways than a link, or has no room left. */

export const fileName = (it: Case): string => `${it.flow}.case.json`;
export const toFile = (it: Case): string => `${toText(it)}\n`;

export type FromFile =
  /** What stands behind the `#` of a link to the same case: opening one and the other is the same. */
  { readonly ok: true; readonly fragment: string } | { readonly ok: false; readonly message: string };

/** Opens the text of a file. Never throws: what is no case gives a sentence. */
export async function fromFile(text: string): Promise<FromFile> {
  if (text.length > MOST_BYTES) return { ok: false, message: 'This file is longer than any case of this site can be.' };
  const opened = fromText(text);
  return opened.ok
    ? { ok: true, fragment: await toLink(opened.case) }
    : { ok: false, message: 'This file does not hold a case of this site.' };
}
