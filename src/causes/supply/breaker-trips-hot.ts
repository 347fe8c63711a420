import type { Cause } from '../cause.ts';
import { fuseFigures, fuseLast, newHolder } from '../main-fuse.ts';
import { AmpName, ampName } from '../the-amp.ts';

export const breakerTripsHot: Cause = {
  id: 'breaker-trips-hot',
  title: (f) => `The breaker in the lead of ${ampName(f)} trips in the heat`,
  faults: ['breaker-trips-hot'],
  split: {
    byMeter:
      'While it is off, black on battery negative: battery volts on the battery side of the breaker, and none on the other?',
    without:
      'While it is off: wait until the breaker has cooled, all else untouched. Does the amplifier come back by itself?',
  },
  mends: ['amp-supply'],
  article: 'wire-fuse-and-ground',
  remedy: (f) => ({
    what: `${AmpName(f)} loses its supply when the breaker in its positive lead gets hot, and has it back once that has cooled.`,
    background:
      'A breaker opens by heat: that of the current, or that of the engine beside it. A light that goes out, and shows no fault, says that the supply went.',
    numbers: fuseFigures(f),
    ...newHolder(f),
    fix: [
      'Engine cold. Key off, battery negative off.',
      'Take the breaker out, back to bright copper.',
      'Fit a sealed holder with crimped lugs, out of the spray and the heat, within a hand’s width of the battery.',
      ...fuseLast(f),
    ],
    notBuy: ['An amplifier: it was not the one that got hot.', 'A bigger breaker: then nothing protects the lead.'],
    proofOfCure: {
      byEar: 'The ride on which it failed, as warm a day and as long: its light stays on.',
    },
  }),
};
