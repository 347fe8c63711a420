import { formatQuantity } from '../../compute/quantity.ts';
import type { Findings } from '../../steps/outcome.ts';
import { gainFigures, gainTargets, HIGHPASS_BACK_ON, HIGHPASS_OFF, outputInWords } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { ratingAssumed, readsForGain } from '../read-first.ts';
import type { RepairAction } from '../repair-action.ts';
import { AmpName, ampName, ampOf, pairOf } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

const setGain = (f: Findings): RepairAction => ({
  do: 'set-gain',
  axle: ampOf(f).drives ?? pairOf(f),
  outputV: gainTargets(f).outputV,
});

const clipsInWords = (f: Findings): string =>
  ratingAssumed(f) ? 'the square root of watts × ohms' : formatQuantity(gainTargets(f).clipsV, 'V', 3);

export const gainTooHigh: Cause = {
  id: 'gain-too-high',
  title: (f) => `The gain of ${ampName(f)} is too high`,
  faults: ['gain-too-high'],
  split: {
    byMeter: `Key off, speakers off, ${HIGHPASS_OFF}. Key on, 80 Hz tone, volume up from zero to your usual top step: is the output above the square root of its watts × ohms?`,
    needs: ['tone-80'],
    touches: ['amp-out-plus'],
    without: 'Gain down by half, volume up until it is as loud as before: is it cleaner, with less hiss?',
    asStep: { without: 'gain-for-volume' },
  },
  mends: ['amp'],
  article: 'gain-structure',
  remedy: (f) => ({
    what: `The gain of ${ampName(f)} is set for less signal than it gets: it clips before the volume is up, and its hiss comes up too.`,
    background:
      'Gain is not volume. Full gain gives no more power, just the same power earlier on the scale, plus hiss.',
    numbers: gainFigures(f),
    readFirst: readsForGain(f),
    repair: [setGain(f)],
    fix: [
      'Read the watts and ohms of a channel off its case or its papers.',
      `Key off, speakers off the amplifier. Its bass boost to zero, ${HIGHPASS_OFF}, gain right down. Head unit tone controls in the middle.`,
      'Key on, volume at zero, 80 Hz tone. Up one step at a time to the loudest step you use.',
      `Meter on AC across one output: turn the gain up to ${outputInWords(f)}, and no further.`,
      `The other outputs the same, within a tenth. Volume at zero, key off, ${HIGHPASS_BACK_ON}, speakers on.`,
    ],
    tools: 'Meter, small screwdriver, 80 Hz tone on a memory stick',
    minutes: 20,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: [
      'Speakers or a stronger amplifier: this one clips because of its setting.',
      'A noise filter: the hiss goes down with the gain.',
    ],
    proofOfCure: {
      byEar: 'Clean at your usual top step. Hiss only with an ear at the cone.',
      byMeter: `Speakers and high-pass off, 80 Hz tone at your usual top step: each output at ${outputInWords(f)}, within a tenth. ${AmpName(f)} clips at ${clipsInWords(f)}. Then ${HIGHPASS_BACK_ON}.`,
      needs: ['tone-80'],
    },
  }),
};
