import { decades, hasRear, REAR, withRuns, withSpeakers } from '../../../world/faults/kit.ts';
import { OPEN, SOUND } from '../../../world/healthy.ts';
import { type StrangeFault, seenAs, withPast } from './strange-fault.ts';

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
/** What is pinched by the seat is free while the seat is off. */
const seatOff = seenAs(SEAT_OFF, (world) => withRuns(world, REAR, { acrossPair: OPEN }));

/** Steps that read a coil by its current, not by its sound. */
const BY_CURRENT = [
  'run-ohms',
  'run-split',
  'coil-ohms',
  'amp-runs',
  'rear-ohms',
  'bulb-to-frame',
  'amp-light',
  'recover',
];
const wholeByOhms = seenAs(BY_CURRENT, (world) => withSpeakers(world, REAR, { braid: SOUND }));

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
      id: 'run-of-few-strands',
      title: 'A wire of each rear run chafed down to a few strands',
      severity: decades('strandsOhm', 8, 30),
      weights: { 'no-rear-sound': 3 },
      rightCauses: ['speaker-wire-open'],
      fits: hasRear,
      apply: (world, ohm) => withRuns(world, REAR, { joint: { plus: { ohm }, minus: SOUND } }),
    },
    { before: { 'comes-and-goes': 2 }, lastChange: { workshop: 2 } },
  ),
  withPast(
    {
      id: 'coils-seized',
      title: 'Rear coils rusted fast in their gaps: whole by their ohms, and they do not move',
      severity: null,
      weights: { 'no-rear-sound': 3 },
      rightCauses: ['coil-open'],
      fits: hasRear,
      apply: (world) => withSpeakers(world, REAR, { braid: OPEN }),
      person: wholeByOhms,
    },
    { before: { never: 0.5 }, lastChange: { opened: 2, battery: 2 } },
  ),
];
