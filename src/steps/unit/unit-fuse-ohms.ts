import { is } from '../outcome.ts';
import { ohmReading } from '../runs/ohms.ts';
import { readsThrough, THROUGH_BANDS, type Through } from '../runs/through.ts';
import { measurement, type ReadingStep } from '../step.ts';
import { FUSE_FORMULA, FUSE_HEALTHY, FUSE_OUTCOMES } from '../supply/fuse-words.ts';

/** What eyes miss of the head unit's fuses: one more in its back, and a strip that broke where nobody sees it. */
export const unitFuseOhms: ReadingStep<Through> = measurement({
  place: 'unit',
  id: 'unit-fuse-ohms',
  short: 'Head unit fuses in ohms',
  ask: 'Each head unit fuse pulled, from the fuse box and from its back: what is the highest reading from blade to blade?',
  phone:
    'Pull one of the radio’s fuses and lay it on something dry. One probe on each blade: what number? Put it back before the next. The one in the back of the radio as well: feel for it beside its plug. What was the highest number?',
  how: [
    'Pull one, read it out of its socket, put it back before the next. “OL” is a reading too.',
    'Don’t forget the one in the back of the head unit, beside its plug. Its chart or its case says whether it has one.',
  ],
  why: 'A fuse can look whole and be open at its cap. A head unit is called dead only when every fuse of it conducts.',
  tool: 'meter',
  minutes: 5,
  conditions: ['key-off', 'panel-off', 'meter-on-ohms'],
  sensible: (f) => is(f, 'unit-fuses', 'whole') && is(f, 'unit-screen', 'dark', 'restarts'),
  observes: ['unit'],
  cautions: ['fuse'],
  probes: 'not drawn',
  readings: { fuseOhm: ohmReading('Highest, blade to blade') },
  bands: () => THROUGH_BANDS,
  judge: ({ fuseOhm = 0 }) => readsThrough(fuseOhm),
  formula: FUSE_FORMULA,
  healthy: () => FUSE_HEALTHY,
  outcomes: { ...FUSE_OUTCOMES, through: 'all of them conduct', open: 'one of them is open' },
  givenUnder: ['unit-fuses'],
});
