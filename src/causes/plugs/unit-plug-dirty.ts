import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { Where } from '../repair-action.ts';
import { levelFigures } from '../unit/levels-alike.ts';
import { isOfOneSpeaker, Placed, placed, silentOne } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { CLEANING_PARTS, CLEANING_STEPS, CLEANING_TOOLS } from './cleaning.ts';

/** One plug has all pairs: where one speaker is silent, the whole of it is cleaned. */
const cleanedPairs = (f: Findings): Where => (isOfOneSpeaker(f) ? 'all' : 'rear');

export const unitPlugDirty: Cause = {
  id: 'unit-plug-dirty',
  title: (f) =>
    isOfOneSpeaker(f)
      ? Placed(silentOne(f), 'pair lost in the head unit’s own plug')
      : 'Bad contacts in the head unit’s own plug',
  faults: ['unit-plug-dirty'],
  split: {
    byMeter:
      'Back-probe the silent pair on the head unit’s side of its plug, then on the loom’s side: signal only on one?',
    without:
      'Key off, pull the head unit’s plug and push it home three times: does it play again, if only for a while?',
    asStep: { without: 'unit-replug' },
  },
  mends: ['unit-leads'],
  article: 'measure-a-speaker-pair',
  remedy: (f) => ({
    what: isOfOneSpeaker(f)
      ? `The ${placed(silentOne(f), 'pair')} does not get through the head unit’s own plug.`
      : 'The rear pairs do not get through the head unit’s own plug.',
    background:
      'Damp and years of vibration leave a film on pins that carry little current, or a pin slips back. Water in the plug shorts the pins until it dries.',
    numbers: levelFigures(f),
    repair: [
      { do: 'seat-plug', plug: 'unit', where: cleanedPairs(f) },
      { do: 'clean-contacts', plug: 'unit', where: cleanedPairs(f) },
      { do: 'renew-pin', plug: 'unit', where: cleanedPairs(f) },
    ],
    fix: [
      'Key off, panel off. Pull the head unit’s plug straight out. Water in it? Shake it out, and leave both halves open until they are dry.',
      ...CLEANING_STEPS,
      'Pull gently at each wire: if a pin gives, push it forward until it latches, or crimp a new one on.',
    ],
    tools: CLEANING_TOOLS,
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    parts: CLEANING_PARTS,
    notBuy: ['A reflash or a head unit, before its plug has been cleaned.', 'Speakers or an amplifier.'],
    cautions: ['warranty'],
    proofOfCure: {
      byEar: 'It plays, and still does after a ride.',
      byMeter: 'Across the pairs, plug home: all of them alike.',
    },
  }),
};
