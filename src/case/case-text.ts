import { validateRig } from '../rig/validate.ts';
import type { Answer } from '../steps/step.ts';
import type { Case, CaseEvent, RepairResult } from './events.ts';
import { MOST_ID_CHARS, MOST_NOTE_CHARS, MOST_READING_CHARS, MOST_READINGS, withinLimits } from './limits.ts';

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
    case 'confirm':
      return ['k', event.step];
    case 'leave':
      return ['l', event.step];
    case 'repair':
      return event.result && event.result !== 'still' ? ['f', event.verdict, event.result] : ['f', event.verdict];
    case 'cured':
      return ['c', event.verdict];
    case 'note':
      return ['n', event.text];
    case 'handOver':
      return ['h', event.flow];
  }
}

const RESULTS: readonly unknown[] = ['still', 'better', 'not-it'] satisfies RepairResult[];
const isResult = (value: unknown): value is RepairResult => RESULTS.includes(value);
const isText = (value: unknown): value is string => typeof value === 'string';
const isId = (value: unknown): value is string => isText(value) && value.length <= MOST_ID_CHARS;
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function unpackAnswer(packed: unknown): Answer | null {
  if (packed === 0) return { cannot: true };
  if (isText(packed)) return { option: packed };
  if (!isRecord(packed)) return null;
  const readings = Object.entries(packed)
    .filter((entry): entry is [string, string] => isText(entry[1]))
    .slice(0, MOST_READINGS);
  return { readings: Object.fromEntries(readings.map(([name, text]) => [name, text.slice(0, MOST_READING_CHARS)])) };
}

/** An entry as an event; null when it is of no kind that is known. */
function unpack(packed: unknown): CaseEvent | null {
  if (!Array.isArray(packed)) return null;
  const [kind, first, second] = packed as unknown[];
  if (kind === 'b') return { type: 'rig', rig: validateRig(first).rig };
  if (kind === 'n') return isText(first) ? { type: 'note', text: first.slice(0, MOST_NOTE_CHARS) } : null;
  if (!isId(first)) return null;
  if (kind === 'a' || kind === 'r') {
    const answer = unpackAnswer(second);
    return answer && { type: kind === 'a' ? 'answer' : 'revise', step: first, answer };
  }
  if (kind === 'k') return { type: 'confirm', step: first };
  if (kind === 'l') return { type: 'leave', step: first };
  if (kind === 'f')
    return isResult(second) ? { type: 'repair', verdict: first, result: second } : { type: 'repair', verdict: first };
  if (kind === 'c') return { type: 'cured', verdict: first };
  return kind === 'h' ? { type: 'handOver', flow: first } : null;
}

/** What could not be used of the bike that a case stands on, which is its last one. */
function refusedOfBike(packed: readonly unknown[]): readonly string[] {
  const bike = packed.findLast((entry) => Array.isArray(entry) && entry[0] === 'b') as Packed | undefined;
  const refused = bike ? validateRig(bike[1]).refused : [];
  const more = refused.length - MOST_BIKE_REFUSALS;
  return more <= 1
    ? refused
    : [...refused.slice(0, MOST_BIKE_REFUSALS), `${more} more values of this bike could not be used.`];
}
/** More sentences than this are no help to anybody. */
const MOST_BIKE_REFUSALS = 5;

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
  if (!Array.isArray(packed) || !isId(packed[0])) return { ok: false, message: 'This is not a case of this site.' };
  const [flow, ...rest] = packed as [string, ...unknown[]];
  const read = rest.flatMap((entry) => unpack(entry) ?? []);
  const { events, refused } = withinLimits(read);
  const unknown = rest.length - read.length;
  const unknownKind =
    unknown === 0
      ? []
      : [`${unknown === 1 ? 'One entry was' : `${unknown} entries were`} of a kind that this version does not know.`];
  return { ok: true, case: { flow, events }, refused: [...refusedOfBike(rest), ...unknownKind, ...refused] };
}
