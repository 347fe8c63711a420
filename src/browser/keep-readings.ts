import type { ProfileReadings } from '../rig/rig.ts';
import { BIKE_KEY } from './case-keys.ts';
import { readStored, type Stored, whyNotSaved, writeStored } from './storage.ts';

const asRecord = (value: unknown): object | undefined =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? value : undefined;

/**
 * Keeps what was read of the stored profile with the bike, whatever else is saved of it: a newer version may have left
 * there what this one does not know. Gives the sentence to show when it could not be kept.
 */
export function keepReadings(profileRead: ProfileReadings): string | undefined {
  const bike: Stored<object> = readStored(BIKE_KEY, asRecord);
  return whyNotSaved(writeStored(BIKE_KEY, { ...(bike.ok ? bike.value : {}), profileRead }));
}
