import { AMP_FIELDS, BIKE_FIELDS, type BikeFieldId } from '../../rig/fields.ts';
import type { KnownAmp, ProfileReadings, Rig } from '../../rig/rig.ts';
import { type Fields, readField, type Typed, typedFrom } from '../../rig/typed-field.ts';
import { validateRig } from '../../rig/validate.ts';
import { type Kept, keptOf } from './kept-fields.ts';

/*
 * What the form of "my bike" knows, apart from how it looks: what is typed becomes a rig and back, and what cannot be
 * used is named beside its field while everything else is kept.
 */

export type AmpsKnown = 'unknown' | 'none' | 'some';

export interface Draft {
  readonly name: string;
  readonly bike: Typed;
  readonly ampsKnown: AmpsKnown;
  readonly amps: readonly Typed[];
  /** What was read of the stored profile. It is kept or forgotten as a whole. */
  readonly profileRead?: ProfileReadings;
  /** What this version does not know of the bike. */
  readonly kept?: Kept;
}

export const EMPTY_DRAFT: Draft = { name: '', bike: {}, ampsKnown: 'unknown', amps: [] };

/** The address of a field in the form: `batteryAh`, or `amp1.powerW` for the second amplifier. */
export const ampPath = (index: number, field: string): string => `amp${index}.${field}`;

/** The parts of the form, each with what it helps to know it. */
const GROUPS = {
  'Head unit and profile': 'Says whether a reflash can matter at all, and how loud the outputs get.',
  'At the front': 'Says what the rear is compared with.',
  'At the rear': 'Says more closely what a healthy rear speaker and its wires read.',
  'Battery and charging': 'Says how loud it plays clean, and how long with the engine off.',
} as const;
/** Every field has a place in the form, or this does not compile. */
const GROUP_OF: Readonly<Record<BikeFieldId, keyof typeof GROUPS>> = {
  unitKind: 'Head unit and profile',
  deliveredWith: 'Head unit and profile',
  deliveredAmp: 'Head unit and profile',
  loweredByDb: 'Head unit and profile',
  boostDb: 'Head unit and profile',
  frontFedBy: 'At the front',
  frontRatedOhm: 'At the front',
  rearFitted: 'At the rear',
  rearFedBy: 'At the rear',
  rearPlug: 'At the rear',
  rearRatedOhm: 'At the rear',
  rearPerChannel: 'At the rear',
  rearWiring: 'At the rear',
  rearRunM: 'At the rear',
  rearRunM2: 'At the rear',
  supplyOffV: 'Battery and charging',
  supplyRunningV: 'Battery and charging',
  batteryKind: 'Battery and charging',
  batteryAh: 'Battery and charging',
  chargingIdleA: 'Battery and charging',
  chargingCruiseA: 'Battery and charging',
};
const BIKE_IDS = Object.keys(GROUP_OF) as BikeFieldId[];

/** The fields of the bike, in groups, without those that another answer makes pointless. */
export function groupsOf(
  bike: Typed,
): readonly { readonly title: string; readonly helps: string; readonly fields: readonly BikeFieldId[] }[] {
  return Object.entries(GROUPS).map(([title, helps]) => ({
    title,
    helps,
    fields: BIKE_IDS.filter((id) => GROUP_OF[id] === title && isAsked(id, bike)),
  }));
}

function isAsked(id: BikeFieldId, bike: Typed): boolean {
  if (id === 'loweredByDb' || id === 'boostDb' || id === 'deliveredAmp') return bike['unitKind'] !== 'replaced';
  if (id.startsWith('rear') && id !== 'rearFitted') return bike['rearFitted'] !== 'no';
  return true;
}

/** The form filled in with what is known of a bike. */
export function draftOf(rig: Rig, kept?: Kept): Draft {
  const { name = '', amps, profileRead, ...bike } = rig;
  const ampsKnown = amps === undefined ? 'unknown' : amps.length === 0 ? 'none' : 'some';
  return {
    name,
    bike: typedFrom(BIKE_FIELDS, bike),
    ampsKnown,
    amps: (amps ?? []).map((amp) => typedFrom(AMP_FIELDS, amp)),
    ...(profileRead && { profileRead }),
    ...(kept && { kept }),
  };
}

/** The form without one of the amplifiers, and without what was kept of it. */
export function withoutAmp(draft: Draft, index: number): Draft {
  const amps = draft.amps.toSpliced(index, 1);
  const { kept } = draft;
  return {
    ...draft,
    amps,
    ampsKnown: amps.length === 0 ? 'none' : 'some',
    ...(kept && { kept: { ...kept, amps: kept.amps.toSpliced(index, 1) } }),
  };
}

export interface ReadDraft {
  /** Everything that can be used. */
  readonly rig: Rig;
  /** What is wrong with the rest, by the path of its field. */
  readonly errors: Readonly<Record<string, string>>;
}

/** The bike that the form describes. A field that is not asked says nothing, and keeps what was typed. */
export function readDraft(draft: Draft): ReadDraft {
  const errors: Record<string, string> = {};
  const read = (fields: Fields, ids: readonly string[], typed: Typed, pathOf: (id: string) => string) => {
    const values: Record<string, unknown> = {};
    for (const id of ids) {
      const field = fields[id];
      const result = field && readField(field, typed[id] ?? '');
      if (result && 'error' in result) errors[pathOf(id)] = result.error;
      else if (result?.value !== undefined) values[id] = result.value;
    }
    return values;
  };
  const asked = groupsOf(draft.bike).flatMap(({ fields }) => fields);
  const bike = read(BIKE_FIELDS, asked, draft.bike, (id) => id);
  const listed = draft.ampsKnown === 'some' ? draft.amps : [];
  const amps = listed.map((amp, i) => read(AMP_FIELDS, Object.keys(AMP_FIELDS), amp, (id) => ampPath(i, id)));
  const name = draft.name.trim();
  const rig = {
    ...(name && { name: name.slice(0, 60) }),
    ...bike,
    ...(draft.ampsKnown !== 'unknown' && { amps }),
    ...(draft.profileRead && { profileRead: draft.profileRead }),
  };
  return { rig: rig as Rig, errors };
}

/** `3 of 7 filled in`, for the heading of a group and for the whole form. */
export function filledIn(fields: readonly string[], typed: Typed): string {
  return `${fields.filter((id) => (typed[id] ?? '').trim() !== '').length} of ${fields.length} filled in`;
}

/** `2 listed`, for the heading of the amplifiers. */
export const ampsListed = ({ ampsKnown, amps }: Draft): string =>
  ampsKnown === 'some' ? `${amps.length} listed` : ampsKnown === 'none' ? 'none on this bike' : 'not said yet';

const drives = (amp: KnownAmp, pair: 'front' | 'rear') => amp.drives === pair || amp.drives === 'both';

/** Answers that do not go together, each in a sentence. Nothing is refused for them: one may still be right. */
export function doubtsAbout(rig: Rig): readonly string[] {
  const doubts: string[] = [];
  for (const pair of ['front', 'rear'] as const) {
    const fedBy = pair === 'front' ? rig.frontFedBy : rig.rearFedBy;
    const driven = rig.amps?.some((amp) => drives(amp, pair) || amp.drives === undefined);
    if (fedBy === 'amp' && driven === false) {
      doubts.push(`The ${pair} speakers are driven by an amplifier, but none in the list drives them.`);
    }
    if (fedBy === 'unit' && rig.amps?.some((amp) => drives(amp, pair))) {
      doubts.push(`The ${pair} speakers are driven by the head unit, but an amplifier in the list drives them too.`);
    }
  }
  if (rig.rearFitted === 'no' && rig.amps?.some((amp) => drives(amp, 'rear'))) {
    doubts.push('There are no rear speakers, but an amplifier in the list drives them.');
  }
  const { rearPerChannel: count, rearWiring: wiring } = rig;
  if (count !== undefined && wiring !== undefined && (count === 1) !== (wiring === 'single')) {
    doubts.push('The number of rear speakers on one channel does not go with how they are wired.');
  }
  if (rig.supplyOffV !== undefined && rig.supplyRunningV !== undefined && rig.supplyOffV >= rig.supplyRunningV) {
    doubts.push('The supply is not higher with the engine running than with it off. Then nothing charges.');
  }
  return doubts;
}

/** More than any description of a bike. A larger file is something else. */
const LARGEST_FILE = 100_000;

/** A file with a bike: what could be used of it, a sentence for everything that could not, and what is kept of that. */
export function rigFromFile(
  text: string,
):
  | { readonly rig: Rig; readonly refused: readonly string[]; readonly kept?: Kept | undefined }
  | { readonly error: string } {
  if (text.length > LARGEST_FILE) return { error: 'This file is too large to be a bike. Nothing was changed.' };
  let claimed: unknown;
  try {
    claimed = JSON.parse(text);
  } catch {
    return { error: 'This file is not one that “Save as a file” made. Nothing was changed.' };
  }
  const { rig, refused } = validateRig(claimed);
  if (Object.keys(rig).length === 0)
    return { error: 'There is nothing about a bike in this file. Nothing was changed.' };
  return { rig, refused, kept: keptOf(claimed, rig) };
}

/** A file name that every system takes: `my-bike.json`, or from the name of the bike. */
export function fileNameOf(rig: Rig): string {
  const words = (rig.name ?? '').toLowerCase().match(/[a-z0-9]+/g) ?? [];
  return `${words.join('-').slice(0, 40) || 'my-bike'}.json`;
}
