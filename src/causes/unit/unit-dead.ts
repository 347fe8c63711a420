import { FEED_LOSES_AT_MOST_V } from '../../compute/unit-feed.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { FEED_NEAR } from './feed-near.ts';

/** What feeds it is called good only where it was measured. */
const fedWell = (f: Findings): string =>
  is(f, 'unit-feeds', 'ok')
    ? ', though everything that feeds it is good.'
    : '. Whether its feeds and its ground reach it has to be measured first.';

export const unitDead: Cause = {
  id: 'unit-dead',
  title: 'The head unit itself',
  faults: ['unit-dead'],
  split: {
    byMeter:
      'Key on, at the head unit’s plug, against the battery negative post: both feeds there and the ground good, and still dark?',
    needs: ['panel-off', 'key-on'],
    without:
      'All fuses whole, pins level, plug home, and still dark: have a workshop measure its feeds before you call it dead.',
  },
  mends: ['unit'],
  article: 'no-sound-at-all',
  remedy: (f) => ({
    what: is(f, 'unit-screen', 'restarts')
      ? `The head unit keeps restarting${fedWell(f)}`
      : `The head unit does not start${fedWell(f)}`,
    background: 'Water, a charging spike, or a jump start the wrong way round.',
    numbers: [FEED_NEAR],
    repair: [{ do: 'repair-unit' }],
    fix: [
      'Its ground first: black probe on the battery negative post, red on its ground wire, key on: below 0.1 V.',
      'Both feeds again with its plug home: within 0.5 V of the battery.',
      'Then have the head unit repaired, or exchanged for one of the same kind. Ask for the same stored profile to be put in: rear on or off, level, bass.',
      'Keep the old one until the new one plays: you may need parts of it.',
    ],
    tools: 'Meter, trim tools',
    minutes: 60,
    who: 'An electronics workshop, a dealer, or a specialist who can load the stored profile.',
    parts: ['A repaired head unit, or one of the same kind with the same stored profile'],
    notBuy: ['An amplifier or speakers.', 'A reflash of a head unit that does not start.'],
    ifDoneAnyway: 'A head unit on a bad ground looks dead, and so will its replacement.',
    proofOfCure: {
      byEar: 'It starts, plays in all corners, and keeps its clock overnight.',
      byMeter: `At its plug both feeds within ${FEED_LOSES_AT_MOST_V} V of the battery while it plays.`,
    },
  }),
};
