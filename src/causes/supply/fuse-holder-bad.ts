import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { fuseFigures, fuseLast, newHolder } from '../main-fuse.ts';
import { CUT_OUT, LAMP_NEEDS, LAMP_ON, readFigures } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';

/** Across a holder with its fuse, at the current of a 55 W lamp. Common practice, no published source. */
const HOLDER_HEALTHY_V = 0.025;
const HOLDER_BAD_V = 0.075;

function holderFigures(f: Findings): readonly Figure[] {
  const { holderV } = f.values('plus-path');
  const read: readonly Figure[] =
    holderV === undefined
      ? []
      : [{ id: 'holder-drop-read', label: 'Lost across the holder, as read', value: holderV, unit: 'V', digits: 3 }];
  return [
    ...read,
    {
      id: 'holder-drop-healthy',
      label: 'Lost across holder and fuse with a 55 W lamp, healthy',
      value: HOLDER_HEALTHY_V,
      unit: 'V',
      limit: 'below',
    },
    { id: 'holder-drop-bad', label: 'Bad', value: HOLDER_BAD_V, unit: 'V', limit: 'above' },
  ];
}

export const fuseHolderBad: Cause = {
  id: 'fuse-holder-bad',
  title: (f) => `The main fuse holder of ${ampName(f)} makes poor contact`,
  faults: ['fuse-holder-resistive', 'fuse-holder-open'],
  split: {
    byMeter: `${LAMP_ON}: more than 75 mV across the fuse holder, with a good fuse in it?`,
    ...LAMP_NEEDS,
    without: 'Key off, main fuse out: brown blades, soft plastic, green, or hardly any grip?',
    asStep: { without: 'fuse-look' },
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `${AmpName(f)} loses volts in its main fuse holder: the contacts are loose, softened by heat, or green.`,
    background:
      'A holder like this shows full battery volts on a meter until current flows. A good fuse in it proves nothing.',
    numbers: [...holderFigures(f), ...readFigures(f, 'plus'), CUT_OUT, ...fuseFigures(f)],
    ...newHolder(f),
    fix: [
      'Key off, fuse out, meter on ohms across the fuse: next to nothing? If not, the fuse is open as well.',
      'Battery negative off. Cut the old holder out, back to bright copper.',
      'Fit a sealed holder with crimped lugs, out of the spray, within a hand’s width of the battery.',
      ...fuseLast(f),
    ],
    notBuy: ['An amplifier: it never got its current.', 'A bigger fuse: the holder is the trouble.'],
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar:
        'Ten loud minutes, then a hand near the holder: only hand-warm. Press the fuse: the amplifier’s light does not flicker.',
      byMeter: `${LAMP_ON}: less than 25 mV across the holder.`,
      ...LAMP_NEEDS,
    },
  }),
};
