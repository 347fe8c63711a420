import { withPhone } from '../change.ts';
import { SOUND } from '../healthy.ts';
import type { Repairs } from './repairs.ts';

/** The phone, and what is between it and the head unit. */
export const PHONE: Repairs<
  'pair-anew' | 'end-voice-mode' | 'update-phone' | 'renew-phone-link' | 'allow-without-headset'
> = {
  // Both sides forget each other, and every question is answered with yes.
  'pair-anew': (world) => withPhone(world, { permitted: true, callMode: false }),
  'end-voice-mode': (world) => withPhone(world, { callMode: false }),
  'update-phone': (world) => withPhone(world, { softwareAgrees: true }),
  'renew-phone-link': (world, { part }) =>
    withPhone(world, part === 'cable' ? { cableHasData: true } : { port: SOUND }),
  // A setting of the headset module, not of the sound.
  'allow-without-headset': (world) => withPhone(world, { needsHeadset: false }),
};
