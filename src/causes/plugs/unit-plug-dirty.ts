import type { Cause } from '../cause.ts';
import { REAR_OVER_FRONT_HEALTHY, rearOverFrontRead } from '../unit/rear-over-front.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { CLEANING_PARTS, CLEANING_STEPS, CLEANING_TOOLS } from './cleaning.ts';

export const unitPlugDirty: Cause = {
  id: 'unit-plug-dirty',
  title: 'Bad contacts in the head unit’s own plug',
  faults: ['unit-plug-dirty'],
  split: {
    byMeter:
      'Back-probe the rear pair on the head unit’s side of its plug, then on the loom’s side: signal only on one?',
    without:
      'Key off, pull the head unit’s plug and push it home three times: does the rear play, if only for a while?',
  },
  mends: ['unit-leads'],
  article: 'measure-a-speaker-pair',
  remedy: (f) => ({
    what: 'The rear pairs do not get through the head unit’s own plug.',
    background:
      'Damp and years of vibration leave a film on pins that carry little current, or a pin slips back. Water in the plug shorts them until it dries.',
    numbers: [...rearOverFrontRead(f), REAR_OVER_FRONT_HEALTHY],
    repair: [
      { do: 'seat-plug', plug: 'unit', where: 'rear' },
      { do: 'clean-contacts', plug: 'unit', where: 'rear' },
      { do: 'renew-pin', plug: 'unit', where: 'rear' },
    ],
    fix: [
      'Key off, panel off. Pull the head unit’s plug straight out. Water in it? Shake it out, and leave both halves open until they are dry.',
      ...CLEANING_STEPS,
      'Pull gently at each wire: a pin that gives is pushed forward until it latches, or a new one is crimped on.',
    ],
    tools: CLEANING_TOOLS,
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    parts: CLEANING_PARTS,
    notBuy: ['A reflash or a head unit, before its plug was cleaned.', 'Speakers or an amplifier.'],
    cautions: ['warranty'],
    proofOfCure: {
      byEar: 'The rear plays, and still does after a ride.',
      byMeter: 'Rear over front across the pairs, plug home: in the band above.',
    },
  }),
};
