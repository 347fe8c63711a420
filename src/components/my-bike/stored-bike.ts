import { BIKE_KEY } from '../../browser/case-keys.ts';
import { damagedKey, readStored, type Saved, writeStored } from '../../browser/storage.ts';
import type { Rig } from '../../rig/rig.ts';
import { type Validated, validateRig } from '../../rig/validate.ts';

export interface LoadedBike {
  readonly rig: Rig;
  /** What a person must know about how it was loaded, if anything. */
  readonly notice?: string;
  /** Sentences about single values that could not be used. */
  readonly refused: readonly string[];
}

/** Storage that holds anything but a description of a bike is damaged; a value too many or wrong is only left out. */
const asBike = (parsed: unknown): Validated | undefined =>
  typeof parsed === 'object' && parsed !== null && !Array.isArray(parsed) ? validateRig(parsed) : undefined;

/** "My bike" as this device knows it. */
export function loadBike(): LoadedBike {
  const stored = readStored(BIKE_KEY, asBike);
  if (stored.ok) {
    const { rig, refused } = stored.value ?? { rig: {}, refused: [] };
    return refused.length === 0
      ? { rig, refused }
      : { rig, refused, notice: 'Not all that was saved here could be used.' };
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

export const saveBike = (rig: Rig): Saved => writeStored(BIKE_KEY, rig);
