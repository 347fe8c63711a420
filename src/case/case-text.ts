import { validateRig } from '../rig/validate.ts';
import type { Answer } from '../steps/step.ts';
import type { Case, CaseEvent, RepairResult } from './events.ts';
import {
  MOST_FLOWS,
  MOST_ID_CHARS,
  MOST_KEPT_CHARS,
  MOST_LINES,
  MOST_MARK_CHARS,
  MOST_NOTE_CHARS,
  MOST_ODD,
  MOST_READING_CHARS,
  MOST_READINGS,
  withinLimits,
} from './limits.ts';

type Packed = readonly [kind: string, ...rest: unknown[]];

const packAnswer = (answer: Answer): unknown =>
  'option' in answer ? answer.option : 'readings' in answer ? answer.readings : 0;

/** An event as a short list. */
export function pack(event: CaseEvent): Packed {
  switch (event.type) {
    case 'rig':
      return event.asCame === undefined ? ['b', event.rig] : ['b', event.rig, event.asCame];
    case 'answer':
      return ['a', event.step, packAnswer(event.answer)];
    case 'revise':
      return ['r', event.step, packAnswer(event.answer)];
    case 'confirm':
      return event.answer ? ['k', event.step, packAnswer(event.answer)] : ['k', event.step];
    case 'leave':
      return ['l', event.step];
    case 'repair':
      return event.result && event.result !== 'still' ? ['f', event.verdict, event.result] : ['f', event.verdict];
    case 'cured':
      return ['c', event.verdict];
    case 'note':
      return ['n', event.text];
    case 'handOver':
      if (event.by?.length) return ['h', event.flow, event.odd ?? [], event.by];
      return event.odd?.length ? ['h', event.flow, event.odd] : ['h', event.flow];
    case 'done':
      return ['t', event.fix, event.lines];
    case 'kept':
      return ['o', event.packed];
  }
}

/** A repair that says nothing else left it still wrong. */
const RESULTS: readonly unknown[] = ['better', 'not-it'] satisfies RepairResult[];
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

const isShort = (value: unknown): boolean => JSON.stringify(value).length <= MOST_KEPT_CHARS;

/** A bike, and as it came where this version cannot use all of it: a newer one can. */
function unpackBike(claimed: unknown, before: unknown): CaseEvent {
  const asCame = before ?? claimed;
  const { rig, refused } = validateRig(asCame);
  if (refused.length === 0) return { type: 'rig', rig };
  const usable = before === undefined ? rig : validateRig(claimed).rig;
  return isRecord(asCame) && isShort(asCame) ? { type: 'rig', rig: usable, asCame } : { type: 'rig', rig: usable };
}

const isMark = (value: unknown): value is string => isText(value) && value.length <= MOST_MARK_CHARS;

/** An entry as an event; null when it is of no kind that is known. */
export function unpack(packed: unknown): CaseEvent | null {
  if (!Array.isArray(packed)) return null;
  const [kind, first, second, third] = packed as unknown[];
  if (kind === 'b') return unpackBike(first, second);
  if (kind === 'o') return Array.isArray(first) && isShort(first) ? { type: 'kept', packed: first } : null;
  if (kind === 'n') return isText(first) ? { type: 'note', text: first.slice(0, MOST_NOTE_CHARS) } : null;
  if (!isId(first)) return null;
  if (kind === 'a' || kind === 'r') {
    const answer = unpackAnswer(second);
    return answer && { type: kind === 'a' ? 'answer' : 'revise', step: first, answer };
  }
  if (kind === 'k') {
    const answer = second === undefined ? undefined : unpackAnswer(second);
    return answer === null ? null : { type: 'confirm', step: first, ...(answer && { answer }) };
  }
  if (kind === 'l') return { type: 'leave', step: first };
  if (kind === 'f')
    return isResult(second) ? { type: 'repair', verdict: first, result: second } : { type: 'repair', verdict: first };
  if (kind === 'c') return { type: 'cured', verdict: first };
  if (kind === 't') {
    if (!Array.isArray(second) || !second.every(isMark)) return null;
    return { type: 'done', fix: first, lines: second.slice(0, MOST_LINES) };
  }
  if (kind !== 'h') return null;
  const idsOf = (value: unknown, most: number) => (Array.isArray(value) ? value.filter(isId).slice(0, most) : []);
  const [odd, by] = [idsOf(second, MOST_ODD), idsOf(third, MOST_FLOWS)];
  return { type: 'handOver', flow: first, ...(odd.length > 0 && { odd }), ...(by.length > 0 && { by }) };
}

const isBike = (entry: unknown): boolean => Array.isArray(entry) && entry[0] === 'b';

/** What could not be used of the bike that a case stands on, which is its last one. */
function refusedOfBike(packed: readonly unknown[]): readonly string[] {
  const bike = packed.findLast(isBike) as Packed | undefined;
  // What came with it and could not be used was said when it came.
  const refused = bike && bike[2] === undefined ? validateRig(bike[1]).refused : [];
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

function unknownInWords(unknown: number, gone: number): readonly string[] {
  if (unknown === 0) return [];
  const kept = unknown - gone;
  const are = `${unknown === 1 ? 'One entry was' : `${unknown} entries were`} of a kind that this version does not know.`;
  if (kept === 0) return [are];
  return [`${are} ${kept === unknown ? (kept === 1 ? 'It is' : 'They are') : `${kept} are`} kept for one that does.`];
}

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
  const { events: entries, refused } = withinLimits(rest, isBike);
  let [unknown, gone] = [0, 0];
  const events = entries.flatMap((entry): CaseEvent | readonly [] => {
    const event = unpack(entry);
    if (event) return event;
    unknown++;
    // It may be of a newer version, which finds it here again.
    if (Array.isArray(entry) && isShort(entry)) return { type: 'kept', packed: entry };
    gone++;
    return [];
  });
  return {
    ok: true,
    case: { flow, events },
    refused: [...refusedOfBike(entries), ...unknownInWords(unknown, gone), ...refused],
  };
}
