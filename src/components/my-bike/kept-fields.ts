import { AMP_FIELDS, BIKE_FIELDS, type Field } from '../../rig/fields.ts';
import type { Rig } from '../../rig/rig.ts';
import { isRecord, type Loose } from '../../rig/validate.ts';

/*
 * What a newer version has saved of a bike and this one cannot use. It stays beside what the form says, so that the newer
 * one finds it again.
 */

export interface Kept {
  readonly bike: Loose;
  /** Of each amplifier, in their order. */
  readonly amps: readonly Loose[];
}

/** A field that is not known here, or a choice that has more options elsewhere. A number out of its range is only wrong. */
const mayBeNewer = (field: Field | undefined): boolean => field === undefined || field.kind === 'choice';

const leftOver = (claimed: Loose, used: Loose, fields: Readonly<Record<string, Field>>): Loose =>
  Object.fromEntries(
    Object.entries(claimed).filter(
      ([id]) => !Object.hasOwn(used, id) && mayBeNewer(Object.hasOwn(fields, id) ? fields[id] : undefined),
    ),
  );

/** What is kept of anything that claims to be a bike, besides what could be used of it; nothing where all could. */
export function keptOf(claimed: unknown, rig: Rig): Kept | undefined {
  if (!isRecord(claimed)) return undefined;
  const { name: _, amps: claimedAmps, ...values } = claimed;
  const bike = leftOver(values, rig as Loose, BIKE_FIELDS);
  const listed: readonly unknown[] = Array.isArray(claimedAmps) ? claimedAmps : [];
  const amps = (rig.amps ?? []).map((used, i) => {
    const one = listed[i];
    return isRecord(one) ? leftOver(one, used as Loose, AMP_FIELDS) : {};
  });
  return [bike, ...amps].some((one) => Object.keys(one).length > 0) ? { bike, amps } : undefined;
}

/** The bike as it is saved: what the form says, and what was kept. */
export function withKept(rig: Rig, kept: Kept | undefined): Loose {
  if (!kept) return rig as Loose;
  const amps = rig.amps?.map((amp, i) => ({ ...kept.amps[i], ...amp }));
  return { ...kept.bike, ...rig, ...(amps && { amps }) };
}
