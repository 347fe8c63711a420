import { adopt } from '../case/adopt.ts';
import type { AnyFlow } from '../case/any-flow.ts';
import { fromText, type Opened, toText } from '../case/case-text.ts';
import { handedOver } from '../case/change.ts';
import type { Case } from '../case/events.ts';
import type { Standing } from '../case/standing.ts';
import type { Rig } from '../rig/rig.ts';
import { validateRig } from '../rig/validate.ts';
import { BIKE_KEY, CASE_KEY, NEW_CASE } from './case-keys.ts';
import { dropDrafts } from './drafts.ts';
import { readStored, whyNotSaved, writeStored } from './storage.ts';

const keyOf = (flow: string) => CASE_KEY + flow;
const asideKeyOf = (flow: string) => `sidestand.aside.${flow}`;

/** The cases that were pushed aside in a flow, the latest last. More than anybody begins; past that the oldest goes. */
const MOST_ASIDE = 50;
const asTexts = (value: unknown): readonly string[] | undefined =>
  Array.isArray(value) && value.every((text) => typeof text === 'string') ? value : undefined;
export const asideOf = (flow: string): readonly string[] => {
  const read = readStored(asideKeyOf(flow), asTexts);
  return read.ok ? (read.value ?? []) : [];
};
/**
 * Keeps a case aside before another one takes its place. Gives the sentence to show when the device has no room for it:
 * then the other one must not take its place. Where nothing can be saved at all, nothing saved is lost either.
 */
function pushAside(it: Case): string | undefined {
  const text = toText(it);
  const others = asideOf(it.flow).filter((other) => other !== text);
  const saved = writeStored(asideKeyOf(it.flow), [...others, text].slice(-MOST_ASIDE));
  return !saved.ok && saved.reason === 'full'
    ? 'There is no room on this device to keep two cases, so the one that is open here stays. Send it to yourself as a link before you clear this site’s data.'
    : undefined;
}
/** Behind all the others, so that asking for earlier cases goes round through all of them. */
function putAtTheEnd(it: Case): void {
  writeStored(asideKeyOf(it.flow), [toText(it), ...asideOf(it.flow)].slice(0, MOST_ASIDE));
}
/** Whether anything but the bike is in a case: only then is it worth keeping. */
const holdsAnswers = (it: Case) => it.events.some((event) => event.type !== 'rig' && event.type !== 'handOver');
const keepsAside = (flow: AnyFlow): boolean => asideOf(flow.id).length > 0;

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
  /** The page of the flow that the link belongs to, when it is another one, below the root of the site. */
  readonly elsewhere?: string;
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

const fresh = (flow: AnyFlow, notices: string[]): Case => ({
  flow: flow.id,
  events: [{ type: 'rig', rig: savedBike(notices) }],
});

function stored(flow: AnyFlow, notices: string[]): Case | undefined {
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

/** What reads links is fetched for those who come by one. */
const openedLink = async (fragment: string): Promise<Opened> => {
  try {
    return (await import('../case/link.ts')).fromLink(fragment);
  } catch {
    return { ok: false, message: 'This link could not be read without a signal. Open it again when there is one.' };
  }
};

/** Where the page of another flow is. Only a link that belongs there needs the list of them. */
async function pathOf(flow: string): Promise<string | undefined> {
  try {
    const { FLOWS, isFlowId } = await import('../case/flows.ts');
    return isFlowId(flow) ? FLOWS[flow].path : undefined;
  } catch {
    return undefined;
  }
}

/** A flow, as much of it as is there, and the way to all of it. */
export interface Arriving {
  readonly flow: AnyFlow;
  readonly whole: () => Promise<AnyFlow>;
}

/** Whether a case holds only what the part of a flow that is there knows of. */
const isCovered = ({ events }: Case, flow: AnyFlow): boolean =>
  events.every((event) =>
    event.type === 'answer' || event.type === 'revise'
      ? flow.steps.has(event.step)
      : event.type === 'rig' || event.type === 'note' || event.type === 'confirm' || event.type === 'leave',
  );

/** The case kept here as it is, where what it can be used for is not known yet. */
const untouched = (flow: AnyFlow): Case | undefined => {
  const opened = fromText(openText(flow.id) ?? '');
  return opened.ok ? opened.case : undefined;
};

/**
 * The case that a page opens with: a new one where that is asked for, that of the link in its address, else the one kept
 * here, else a fresh one. What an answer is worth is known to the whole flow only, so an earlier case waits for it.
 */
export async function load({ flow, whole }: Arriving, fragment: string): Promise<Loaded> {
  const kept = untouched(flow);
  const byLink = fragment.includes('.');
  if (!byLink && (kept === undefined || isCovered(kept, flow))) return loadInto(flow, fragment);
  try {
    return await loadInto(await whole(), fragment);
  } catch {
    const notices = byLink ? ['This link could not be read without a signal. Open it again when there is one.'] : [];
    return { case: kept ?? fresh(flow, notices), notices, keptAside: keepsAside(flow) };
  }
}

async function loadInto(flow: AnyFlow, fragment: string): Promise<Loaded> {
  const notices: string[] = [];
  const kept = stored(flow, notices);
  if (fragment === NEW_CASE) return begin(flow, kept, notices);
  if (fragment.includes('.')) {
    const opened = await openedLink(fragment);
    if (!opened.ok) notices.push(opened.message);
    else {
      const { flow: made } = opened.case;
      const elsewhere = made === flow.id ? undefined : await pathOf(made);
      if (elsewhere !== undefined) return { case: kept ?? fresh(flow, notices), notices, keptAside: false, elsewhere };
      const { case: usable, refused } = adopt(flow, opened.case);
      if (made !== flow.id)
        notices.push('This link was made for a flow that this version does not have. What fits here was taken over.');
      notices.push(...opened.refused, ...refused);
      if (kept !== undefined && holdsAnswers(kept) && toText(kept) !== toText(usable)) {
        const noRoom = pushAside(kept);
        if (noRoom !== undefined) return { case: kept, notices: [...notices, noRoom], keptAside: keepsAside(flow) };
      }
      if (kept === undefined || toText(kept) !== toText(usable)) dropDrafts(flow.id);
      return { case: usable, notices, keptAside: keepsAside(flow) };
    }
  }
  return { case: kept ?? fresh(flow, notices), notices, keptAside: keepsAside(flow) };
}

/**
 * Whether another tab has kept something else here since this one last did or looked. Then what this one holds is older,
 * and must not take the place of that unasked.
 */
export function isOvertaken(flow: string, known: string | undefined): boolean {
  // What this tab kept itself need not be read through again at every tap.
  const there = readStored(keyOf(flow), (text) => (text === known ? known : asText(text)));
  return known !== undefined && there.ok && there.value !== undefined && there.value !== known;
}

/** The case that another tab has kept here. */
export function takeNewer(flow: AnyFlow): Loaded {
  const notices: string[] = [];
  return { case: stored(flow, notices) ?? fresh(flow, notices), notices, keptAside: keepsAside(flow) };
}

/** Goes on with this tab's case. That of the other tab is kept aside, or stays where there is no room for both. */
export function goOnWithOlder(flow: AnyFlow, it: Case): Loaded | { readonly noRoom: string } {
  const newer = stored(flow, []);
  const noRoom = newer && holdsAnswers(newer) ? pushAside(newer) : undefined;
  return noRoom === undefined ? { case: it, notices: [], keptAside: keepsAside(flow) } : { noRoom };
}

/** Keeps the case. Gives the sentence to show when the browser does not let it. */
export const save = (it: Case): string | undefined => whyNotSaved(writeStored(keyOf(it.flow), toText(it)));

/**
 * Lays the case ready for the page of another flow. A case that is open there is kept aside. Gives the sentence to show
 * when there is no room for both: then nothing was changed.
 */
export function handOver(it: Case, standing: Standing, flow: string, told: Standing['facts'] = {}): string | undefined {
  const there = readStored(keyOf(flow), asText);
  const open = there.ok && there.value !== undefined ? fromText(there.value) : undefined;
  const noRoom = open?.ok && holdsAnswers(open.case) ? pushAside(open.case) : undefined;
  if (noRoom !== undefined) return noRoom;
  writeStored(keyOf(flow), toText(handedOver(it, standing, flow, told)));
  dropDrafts(flow);
  return undefined;
}

/** The case that was pushed aside last, taken back out. The one that is open now takes its place. */
export function takeBackAside(flow: AnyFlow, now: Case): Loaded | undefined {
  const others = asideOf(flow.id);
  const opened = fromText(others.at(-1) ?? '');
  writeStored(asideKeyOf(flow.id), others.slice(0, -1));
  if (!opened.ok) return undefined;
  if (holdsAnswers(now)) putAtTheEnd(now);
  dropDrafts(flow.id);
  const { case: usable, refused } = adopt(flow, opened.case);
  return { case: usable, notices: [...opened.refused, ...refused], keptAside: keepsAside(flow) };
}

/** The text of the case that is open in a flow; undefined where there is none. A damaged one is left for its page, which says so. */
export const openText = (flow: string): string | undefined => {
  const read = readStored(keyOf(flow), (value) => asText(value) ?? '');
  return (read.ok && read.value) || undefined;
};

/** A new case on the bike that is saved now. The one that was open is kept aside. */
export function begin(flow: AnyFlow, now: Case | undefined, notices: string[] = []): Loaded {
  const noRoom = now && holdsAnswers(now) ? pushAside(now) : undefined;
  if (now && noRoom !== undefined) return { case: now, notices: [...notices, noRoom], keptAside: keepsAside(flow) };
  dropDrafts(flow.id);
  return { case: fresh(flow, notices), notices, keptAside: keepsAside(flow) };
}
