import { validateRig } from '../rig/validate.ts';
import type { Answer } from '../steps/step.ts';
import type { Case, CaseEvent } from './events.ts';

/**
 * A case as text for a link: the version, a point, and the events as packed JSON in base64url. It stands behind the
 * `#` of an address, so it never leaves the device by itself.
 */
export const LINK_VERSION = '1';
/** More than any real case needs. A longer one is refused, so that a small link cannot unpack into a huge one. */
const MOST_BYTES = 200_000;

type Packed = readonly [kind: string, ...rest: unknown[]];

const packAnswer = (answer: Answer): unknown =>
  'option' in answer ? answer.option : 'readings' in answer ? answer.readings : 0;

function pack(event: CaseEvent): Packed {
  switch (event.type) {
    case 'rig':
      return ['b', event.rig];
    case 'answer':
      return ['a', event.step, packAnswer(event.answer)];
    case 'revise':
      return ['r', event.step, packAnswer(event.answer)];
    case 'repair':
      return ['f', event.verdict];
    case 'cured':
      return ['c', event.verdict];
    case 'note':
      return ['n', event.text];
    case 'handOver':
      return ['h', event.flow];
  }
}

const isText = (value: unknown): value is string => typeof value === 'string';
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function unpackAnswer(packed: unknown): Answer | null {
  if (packed === 0) return { cannot: true };
  if (isText(packed)) return { option: packed };
  if (!isRecord(packed)) return null;
  const readings = Object.entries(packed).filter((entry): entry is [string, string] => isText(entry[1]));
  return { readings: Object.fromEntries(readings.map(([name, text]) => [name, text.slice(0, 40)])) };
}

function unpack(packed: unknown, refused: string[]): CaseEvent | null {
  if (!Array.isArray(packed)) return null;
  const [kind, first, second] = packed as unknown[];
  if (kind === 'b') {
    const { rig, refused: why } = validateRig(first);
    refused.push(...why);
    return { type: 'rig', rig };
  }
  if (!isText(first)) return null;
  if (kind === 'a' || kind === 'r') {
    const answer = unpackAnswer(second);
    return answer && { type: kind === 'a' ? 'answer' : 'revise', step: first, answer };
  }
  if (kind === 'f') return { type: 'repair', verdict: first };
  if (kind === 'c') return { type: 'cured', verdict: first };
  if (kind === 'n') return { type: 'note', text: first.slice(0, 1000) };
  return kind === 'h' ? { type: 'handOver', flow: first } : null;
}

/** What could be read of something that claims to be a case, and a sentence for everything that could not. */
export type Opened =
  | { readonly ok: true; readonly case: Case; readonly refused: readonly string[] }
  | { readonly ok: false; readonly message: string };

/** The case as plain JSON text, which storage keeps and the link packs. */
export const toText = ({ flow, events }: Case): string => JSON.stringify([flow, ...events.map(pack)]);

export function fromText(text: string): Opened {
  let packed: unknown;
  try {
    packed = JSON.parse(text);
  } catch {
    return { ok: false, message: 'What is saved here is damaged and cannot be read.' };
  }
  if (!Array.isArray(packed) || !isText(packed[0])) return { ok: false, message: 'This is not a case of this site.' };
  const [flow, ...rest] = packed as [string, ...unknown[]];
  const refused: string[] = [];
  const events = rest.flatMap((one) => unpack(one, refused) ?? []);
  const unknown = rest.length - events.length;
  if (unknown > 0)
    refused.push(
      `${unknown === 1 ? 'One entry was' : `${unknown} entries were`} of a kind that this version does not know.`,
    );
  return { ok: true, case: { flow, events }, refused };
}

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
  try {
    const bytes = Uint8Array.from(atob(data.replaceAll('-', '+').replaceAll('_', '/')), (char) => char.charCodeAt(0));
    return fromText(new TextDecoder().decode(await through(bytes, new DecompressionStream('deflate-raw'), MOST_BYTES)));
  } catch {
    return { ok: false, message: 'This link is damaged. Perhaps its end was cut off. Ask for it again.' };
  }
}
