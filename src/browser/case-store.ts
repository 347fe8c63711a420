import type { Flow } from '../../machines/kit.ts';
import { adopt } from '../case/adopt.ts';
import { handedOver } from '../case/change.ts';
import type { Case } from '../case/events.ts';
import { FLOWS, type FlowId } from '../case/flows.ts';
import { fromLink, fromText, toText } from '../case/link.ts';
import type { Standing } from '../case/replay.ts';
import type { Rig } from '../rig/rig.ts';
import { validateRig } from '../rig/validate.ts';
import { readStored, removeStored, whyNotSaved, writeStored } from './storage.ts';

/** Cases on this device: one open case per flow, and the one that a link pushed aside. */
export const CASE_KEY = 'sidestand.case.';
export const BIKE_KEY = 'sidestand.bike';
const keyOf = (flow: string) => CASE_KEY + flow;
const asideKeyOf = (flow: string) => `sidestand.aside.${flow}`;

const asText = (value: unknown): string | undefined =>
  typeof value === 'string' && fromText(value).ok ? value : undefined;
const isRecord = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export interface Loaded {
  readonly case: Case;
  /** Sentences about what could not be used or where things went. */
  readonly notices: readonly string[];
  /** Whether a case that was here before is kept aside. */
  readonly keptAside: boolean;
}

/** "My bike" as this device knows it. */
export function savedBike(notices: string[]): Rig {
  const stored = readStored(BIKE_KEY, (parsed) => (isRecord(parsed) ? parsed : undefined));
  if (!stored.ok) {
    if (stored.reason === 'damaged')
      notices.push('What was saved as “my bike” was damaged. It was set aside, and the flow asks instead.');
    return {};
  }
  if (stored.value === undefined) return {};
  const { rig, refused } = validateRig(stored.value);
  notices.push(...refused);
  return rig;
}

const fresh = (flow: Flow, notices: string[]): Case => ({
  flow: flow.id,
  events: [{ type: 'rig', rig: savedBike(notices) }],
});
const holdsAnswers = (it: Case) => it.events.some((event) => event.type !== 'rig' && event.type !== 'handOver');

function stored(flow: Flow, notices: string[]): Case | undefined {
  const read = readStored(keyOf(flow.id), asText);
  if (!read.ok) {
    if (read.reason === 'damaged')
      notices.push('The case saved here was damaged. It was set aside, and a new one was begun.');
    return undefined;
  }
  const opened = read.value === undefined ? undefined : fromText(read.value);
  if (!opened?.ok) return undefined;
  const { case: usable, refused } = adopt(flow, opened.case);
  const handedOver = opened.case.events.some((event) => event.type === 'handOver' && event.flow === flow.id);
  // A case from another flow brings answers that this one has no use for. That is no loss worth a sentence.
  if (!handedOver) notices.push(...opened.refused, ...refused);
  return usable;
}

/** The case that a page opens with: that of the link in its address, else the one kept here, else a fresh one. */
export async function load(flow: Flow, fragment: string): Promise<Loaded> {
  const notices: string[] = [];
  const kept = stored(flow, notices);
  if (fragment.includes('.')) {
    const opened = await fromLink(fragment);
    if (!opened.ok) notices.push(opened.message);
    else {
      const { case: usable, refused } = adopt(flow, opened.case);
      if (opened.case.flow !== flow.id)
        notices.push(`This link was made for another flow (“${opened.case.flow}”). What fits here was taken over.`);
      notices.push(...opened.refused, ...refused);
      const aside = kept !== undefined && holdsAnswers(kept) && toText(kept) !== toText(usable);
      if (aside) writeStored(asideKeyOf(flow.id), toText(kept));
      return { case: usable, notices, keptAside: aside };
    }
  }
  const handedHere = kept?.events.at(-1)?.type === 'handOver';
  const aside = handedHere && readStored(asideKeyOf(flow.id), asText);
  return {
    case: kept ?? fresh(flow, notices),
    notices,
    keptAside: aside !== false && aside.ok && aside.value !== undefined,
  };
}

/** Keeps the case. Gives the sentence to show when the browser does not let it. */
export const save = (it: Case): string | undefined => whyNotSaved(writeStored(keyOf(it.flow), toText(it)));

/** Lays the case ready for the page of another flow. A case that is open there is kept aside. */
export function handOver(it: Case, standing: Standing, flow: FlowId): void {
  const there = readStored(keyOf(flow), asText);
  const open = there.ok && there.value !== undefined ? fromText(there.value) : undefined;
  if (open?.ok && holdsAnswers(open.case)) writeStored(asideKeyOf(flow), toText(open.case));
  writeStored(keyOf(flow), toText(handedOver(it, standing, flow)));
}

/** The case that a link pushed aside, taken back out. */
export function takeBackAside(flow: Flow): Case | undefined {
  const read = readStored(asideKeyOf(flow.id), asText);
  const opened = read.ok && read.value !== undefined ? fromText(read.value) : undefined;
  if (!opened?.ok) return undefined;
  removeStored(asideKeyOf(flow.id));
  return adopt(flow, opened.case).case;
}

/** The cases on this device that hold answers. */
export const openCases = (): readonly { readonly flow: FlowId; readonly answers: number }[] =>
  (Object.keys(FLOWS) as FlowId[]).flatMap((flow) => {
    const read = readStored(keyOf(flow), asText);
    const opened = read.ok && read.value !== undefined ? fromText(read.value) : undefined;
    const answers = opened?.ok ? opened.case.events.filter(({ type }) => type === 'answer').length : 0;
    return answers > 0 ? [{ flow, answers }] : [];
  });

/** A new case on the bike that is saved now. */
export function begin(flow: Flow): Loaded {
  const notices: string[] = [];
  return { case: fresh(flow, notices), notices, keptAside: false };
}
