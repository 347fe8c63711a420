import { BIKE_KEY } from '../../browser/case-keys.ts';
import { damagedKey, readStored, type Saved, writeStored } from '../../browser/storage.ts';
import type { Rig } from '../../rig/rig.ts';
import { type Validated, validateRig } from '../../rig/validate.ts';
import { type Kept, keptOf, withKept } from './kept-fields.ts';

export interface LoadedBike {
  readonly rig: Rig;
  /** What a person must know about how it was loaded, if anything. */
  readonly notice?: string;
  /** Sentences about single values that could not be used. */
  readonly refused: readonly string[];
  /** What stays beside it for a version that can use it. */
  readonly kept?: Kept | undefined;
}

/** Storage that holds anything but a description of a bike is damaged; a value too many or wrong is only left out. */
function asBike(parsed: unknown): (Validated & Pick<LoadedBike, 'kept'>) | undefined {
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) return undefined;
  const read = validateRig(parsed);
  return { ...read, kept: keptOf(parsed, read.rig) };
}

/** "My bike" as this device knows it. */
export function loadBike(): LoadedBike {
  const stored = readStored(BIKE_KEY, asBike);
  if (stored.ok) {
    const { rig, refused, kept } = stored.value ?? { rig: {}, refused: [] };
    if (refused.length === 0) return { rig, refused, kept };
    const stays = kept ? ' What this version does not know is kept for one that does.' : '';
    return { rig, refused, kept, notice: `Not all that was saved here could be used.${stays}` };
  }
  if (stored.reason === 'unavailable') {
    const notice = 'This browser does not let the page save anything. Save a file before you leave.';
    return { rig: {}, refused: [], notice };
  }
  const kept =
    stored.setAside === undefined ? '' : ` It is kept under “${damagedKey(BIKE_KEY)}” in the storage of this site.`;
  const notice = `What was saved here was damaged and could not be read.${kept} The form starts empty.`;
  return { rig: {}, refused: [], notice };
}

export const saveBike = (rig: Rig, kept?: Kept): Saved => writeStored(BIKE_KEY, withKept(rig, kept));
