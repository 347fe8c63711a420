import { is } from '../outcome.ts';
import { ohmReading } from '../runs/ohms.ts';
import { readsThrough, THROUGH_BANDS, type Through } from '../runs/through.ts';
import { measurement, type ReadingStep } from '../step.ts';
import { FUSE_FORMULA, FUSE_HEALTHY, FUSE_OUTCOMES } from './fuse-words.ts';
import { fuseIsOpen, fuseMayBeOpen } from './may-fail.ts';

/** The fuse by itself: what eyes cannot see of it, and what tells it from the holder that it sat in. */
export const fuseOhms: ReadingStep<Through> = measurement({
  place: 'supply',
  id: 'fuse-ohms',
  short: 'The pulled fuse in ohms',
  ask: 'The old main fuse out of its holder: how many ohms from blade to blade?',
  phone: 'Lay the old fuse, out of its holder, on something dry. One probe on each blade: what number?',
  how: [
    'Lay it on wood or paper, out of its holder. One probe on each blade, on bare metal.',
    '“OL” is a reading too: type it.',
  ],
  why: 'A fuse can look whole and be open at its cap. If it conducts, it was never the fault: its holder is.',
  tool: 'meter',
  minutes: 2,
  conditions: ['key-off', 'fuse-out', 'meter-on-ohms'],
  sensible: (f) =>
    is(f, 'fuse-look', 'whole', 'holder') && (fuseMayBeOpen(f) || fuseIsOpen(f) || is(f, 'spare-fuse', 'wakes')),
  observes: ['amp-supply'],
  probes: 'not drawn',
  readings: { fuseOhm: ohmReading('Blade to blade') },
  bands: () => THROUGH_BANDS,
  judge: ({ fuseOhm = 0 }) => readsThrough(fuseOhm),
  formula: FUSE_FORMULA,
  healthy: () => FUSE_HEALTHY,
  outcomes: FUSE_OUTCOMES,
  givenUnder: ['fuse-look'],
});
