import { fromText, type Opened, toText } from './case-text.ts';
import type { Case } from './events.ts';
import { MOST_BYTES } from './limits.ts';

/**
 * A case as text for a link: the version, a point, and the events as packed JSON in base64url. It stands behind the
 * `#` of an address, so it never leaves the device by itself.
 */
export const LINK_VERSION = '1';
/** Base64 takes four characters for three bytes, and packing never makes a case much longer than it is. */
const MOST_LINK_CHARS = MOST_BYTES * 1.5;

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  transform: GenericTransformStream,
  limit: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const stream: ReadableStream<Uint8Array> = new Blob([bytes]).stream().pipeThrough(transform);
  const parts: BlobPart[] = [];
  let length = 0;
  for (const reader = stream.getReader(); ; ) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > limit) {
      await reader.cancel();
      throw new RangeError(`a case must be at most ${limit} bytes`);
    }
    parts.push(value.slice());
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

/** The text behind the `#` of a link to this case. */
export async function toLink(it: Case): Promise<string> {
  const packed = await through(new TextEncoder().encode(toText(it)), new CompressionStream('deflate-raw'), MOST_BYTES);
  const base64 = btoa(Array.from(packed, (byte) => String.fromCharCode(byte)).join(''));
  return `${LINK_VERSION}.${base64.replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')}`;
}

/** Opens the text behind the `#`. Never throws: a broken link gives a sentence. */
export async function fromLink(fragment: string): Promise<Opened> {
  const [version, data] = fragment.split('.', 2);
  if (!/^\d+$/.test(version ?? '') || !data)
    return { ok: false, message: 'This link does not hold a case of this site.' };
  if (version !== LINK_VERSION) {
    return {
      ok: false,
      message: `This link was made by another version of this site (${version}); this one reads version ${LINK_VERSION}.`,
    };
  }
  if (data.length > MOST_LINK_CHARS)
    return { ok: false, message: 'This link is longer than any case of this site can be.' };
  try {
    const bytes = Uint8Array.from(atob(data.replaceAll('-', '+').replaceAll('_', '/')), (char) => char.charCodeAt(0));
    return fromText(new TextDecoder().decode(await through(bytes, new DecompressionStream('deflate-raw'), MOST_BYTES)));
  } catch {
    return { ok: false, message: 'This link is damaged. Perhaps its end was cut off. Ask for it again.' };
  }
}
