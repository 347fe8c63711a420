import type { Case } from '../case/events.ts';
import { readStored, removeStored, writeStored } from './storage.ts';

/*
 * Readings that were typed and not sent yet. A phone kills a page that is not looked at, and the meter has both hands.
 * They belong to a step of the case that is open, and to the time since its last repair: what was read before that is
 * no reading of now.
 */

type Texts = Readonly<Record<string, string>>;
interface Drafts {
  readonly repairs: number;
  readonly byStep: Readonly<Record<string, Texts>>;
}

const keyOf = (flow: string) => `sidestand.draft.${flow}`;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isTexts = (value: unknown): value is Texts =>
  isRecord(value) && Object.values(value).every((text) => typeof text === 'string');
const asDrafts = (value: unknown): Drafts | undefined =>
  isRecord(value) &&
  typeof value['repairs'] === 'number' &&
  isRecord(value['byStep']) &&
  Object.values(value['byStep']).every(isTexts)
    ? (value as unknown as Drafts)
    : undefined;

const repairsIn = ({ events }: Case): number => events.filter(({ type }) => type === 'repair').length;

function draftsOf(it: Case): Drafts['byStep'] {
  const read = readStored(keyOf(it.flow), asDrafts);
  return read.ok && read.value?.repairs === repairsIn(it) ? read.value.byStep : {};
}

const write = (it: Case, byStep: Drafts['byStep']): void => {
  // A browser that does not let it be saved has said so when the case was.
  if (Object.keys(byStep).length === 0) removeStored(keyOf(it.flow));
  else writeStored(keyOf(it.flow), { repairs: repairsIn(it), byStep } satisfies Drafts);
};

/** What was typed in a step and not sent. */
export const draftOf = (it: Case, step: string): Texts => {
  const drafts = draftsOf(it);
  return (Object.hasOwn(drafts, step) && drafts[step]) || {};
};

export const keepDraft = (it: Case, step: string, texts: Texts): void => write(it, { ...draftsOf(it), [step]: texts });

/** The step is answered, or what was begun there was given up. */
export function dropDraft(it: Case, step: string): void {
  const { [step]: dropped, ...others } = draftsOf(it);
  if (dropped) write(it, others);
}

/** Another case takes the place of the one that is open. */
export const dropDrafts = (flow: string): void => void removeStored(keyOf(flow));
