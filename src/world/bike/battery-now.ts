import { LOUD_VOLUME, type Moment } from '../moment.ts';
import type { Supply } from '../state.ts';

/** What a battery that has switched itself off still shows, and what any load makes nothing of. From memory: 0 to 5 V. */
const SWITCHED_OFF = { openV: 3, internalOhm: 2_000, acceptOhm: 2_000 };

/**
 * Inner ohms of a cold battery over those at 20 °C: twice as many at −20 °C. From memory, after what starter batteries are
 * rated to give in the cold; no published source. A warm one is taken as one of 20 °C.
 */
const DOUBLES_OVER_K = 40;
export const coldRatio = ({ batteryC }: Pick<Supply, 'batteryC'>): number =>
  2 ** (Math.max(0, 20 - batteryC) / DOUBLES_OVER_K);

/** Whether something draws so much that what lies on the surface of the plates is gone at once. */
export const drains = ({ lamp, toneHz, volumeRatio }: Moment): boolean =>
  lamp === true || (toneHz !== null && volumeRatio >= LOUD_VOLUME);

/** The battery as a circuit meets it now. */
export function batteryNow(
  supply: Supply,
  moment: Moment,
  isOff: boolean,
): Pick<Supply, 'openV' | 'internalOhm' | 'acceptOhm'> {
  if (isOff) return SWITCHED_OFF;
  const { openV, surfaceV, internalOhm, acceptOhm } = supply;
  return {
    openV: openV + (drains(moment) ? 0 : surfaceV),
    internalOhm: coldRatio(supply) * internalOhm,
    acceptOhm: coldRatio(supply) * acceptOhm,
  };
}
