import type { AmpValues } from '../../rig/fields.ts';
import type { Amp, World } from '../state.ts';

/** Whether it is so of an amplifier, before and after, as it was made. */
export const anyAmp =
  (is: (before: Amp, after: Amp, made: AmpValues | undefined) => boolean) =>
  (before: World, after: World): boolean =>
    after.amps.some((amp, i) => {
      const was = before.amps[i];
      return was !== undefined && is(was, amp, after.rig.amps[i]);
    });
