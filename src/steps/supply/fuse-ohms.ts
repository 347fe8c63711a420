import { is } from '../outcome.ts';
import { ohmReading } from '../runs/ohms.ts';
import { type Band, labelIn, measurement, type ReadingStep } from '../step.ts';
import { fuseIsOpen, fuseMayBeOpen } from './may-fail.ts';

/** A fuse for tens of amperes has some milliohms, and the leads of a meter half an ohm at most. Common practice, no published source. */
const THROUGH_OHM = 2;
/** Probes on dull blades read a little more. More than this is a fuse that dirt bridges. An estimate. */
const OPEN_OHM = 20;

const FUSE_BANDS: readonly Band[] = [
  { label: 'through', low: 0, high: THROUGH_OHM, mood: 'good' },
  { label: 'unclear', low: THROUGH_OHM, high: OPEN_OHM, mood: 'unsure' },
  { label: 'open', low: OPEN_OHM, high: Infinity, mood: 'bad' },
];

/** The fuse by itself: what eyes cannot see of it, and what tells it from the holder that it sat in. */
export const fuseOhms: ReadingStep<'through' | 'unclear' | 'open'> = measurement({
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
  bands: () => FUSE_BANDS,
  judge: ({ fuseOhm = 0 }) => {
    const label = labelIn(FUSE_BANDS, fuseOhm);
    return label === 'through' ? 'through' : label === 'open' ? 'open' : 'unclear';
  },
  formula: 'blade to blade = the meter’s leads + a few milliohms of a whole fuse',
  healthy: () => 'Healthy is what your probes read held together. OL, or thousands of ohms, is open.',
  outcomes: { through: 'the fuse conducts', unclear: 'a few ohms too many', open: 'the fuse is open' },
  givenUnder: ['fuse-look'],
});
