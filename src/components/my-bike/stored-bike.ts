import { BIKE_KEY } from '../../browser/case-store.ts';
import { damagedKey, readStored, type Saved, writeStored } from '../../browser/storage.ts';
import type { Rig } from '../../rig/rig.ts';
import { type Validated, validateRig } from '../../rig/validate.ts';

export interface LoadedBike {
  readonly rig: Rig;
  /** Sentences about what was saved and could not be used. */
  readonly notices: readonly string[];
}

/** Storage that holds anything but a description of a bike is damaged; a value too many or wrong is only left out. */
const asBike = (parsed: unknown): Validated | undefined =>
  typeof parsed === 'object' && parsed !== null && !Array.isArray(parsed) ? validateRig(parsed) : undefined;

/** "My bike" as this device knows it. */
export function loadBike(): LoadedBike {
  const stored = readStored(BIKE_KEY, asBike);
  if (stored.ok) return { rig: stored.value?.rig ?? {}, notices: stored.value?.refused ?? [] };
  if (stored.reason === 'unavailable') {
    return { rig: {}, notices: ['This browser does not let the page save anything. Save a file before you leave.'] };
  }
  const where =
    stored.setAside === undefined ? '' : ` It is kept under “${damagedKey(BIKE_KEY)}” in the storage of this site.`;
  return {
    rig: {},
    notices: [`What was saved here was damaged and could not be read.${where} The form starts empty.`],
  };
}

export const saveBike = (rig: Rig): Saved => writeStored(BIKE_KEY, rig);
