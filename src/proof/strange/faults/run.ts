import { stepName } from '../../../steps/subject.ts';
import { decades, hasRear, REAR, withRuns } from '../../../world/faults/kit.ts';
import { OPEN } from '../../../world/healthy.ts';
import { oncePer } from '../../../world/remembered.ts';
import { type Ridden, ridden } from '../../../world/symptoms/index.ts';
import type { Observe } from '../oddity.ts';
import { type StrangeFault, withPast } from './strange-fault.ts';

/* Of the runs from an output to the rear speakers. */

/** Steps for which the seat comes off. */
const SEAT_OFF = [
  'run-ohms',
  'run-split',
  'coil-ohms',
  'wire-to-frame',
  'amp-runs',
  'amp-wires-to-frame',
  'pop-run',
  'amp-out',
  'wiggle',
];
const unpinched = oncePer((bike: Ridden): Ridden => ridden(withRuns(bike.world, REAR, { acrossPair: OPEN })));
/** What is pinched by the seat is free while the seat is off. */
const seatOff =
  (observe: Observe): Observe =>
  (step, bike, situation) =>
    observe(step, SEAT_OFF.includes(stepName(step)) ? unpinched(bike) : bike, situation);

export const STRANGE_RUNS: readonly StrangeFault[] = [
  withPast(
    {
      id: 'pinched-by-the-seat',
      title: 'Rear speaker wires pinched to each other, and only with the seat on',
      severity: decades('acrossOhm', 0.02, 0.2),
      weights: { 'no-rear-sound': 2, 'amp-wont-turn-on': 3 },
      rightCauses: ['speaker-pair-shorted'],
      fits: hasRear,
      apply: (world, ohm) => withRuns(world, REAR, { acrossPair: { ohm } }),
      person: seatOff,
    },
    { before: { 'comes-and-goes': 4 }, lastChange: { opened: 4, battery: 2 } },
  ),
  withPast(
    {
      id: 'splice-corroded',
      title: 'Splices of both rear runs gone green, with kilohms in place of ohms',
      severity: decades('spliceOhm', 400, 30_000),
      weights: { 'no-rear-sound': 4 },
      rightCauses: ['speaker-wire-open'],
      fits: hasRear,
      apply: (world, ohm) => withRuns(world, REAR, { joint: { plus: { ohm }, minus: { ohm: ohm / 3 } } }),
    },
    { before: { 'comes-and-goes': 2 }, lastChange: { opened: 2 } },
  ),
];
