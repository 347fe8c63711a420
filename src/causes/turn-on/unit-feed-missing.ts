import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { type Figure, voltsRead } from '../figure.ts';
import { AmpName } from '../the-amp.ts';
import { FEED_NEAR } from '../unit/feed-near.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

/** What is silent because of it. */
const follows = (f: Findings): string =>
  f.rig.amps?.length === 0 ? 'Nothing can play without it.' : `${AmpName(f)} follows it, and stays off rightly.`;

/** The feeds as they were read. */
function feedsRead(f: Findings): readonly Figure[] {
  const { constantV, keyV } = f.values('unit-feeds');
  return [
    ...voltsRead('constant-feed-read', 'Feed that is always live, as read', constantV),
    ...voltsRead('key-feed-read', 'Feed with the key, as read', keyV),
  ];
}

export const unitFeedMissing: Cause = {
  id: 'unit-feed-missing',
  title: 'The head unit has lost one of its feeds',
  faults: ['unit-feed-missing', 'unit-fuse-open'],
  split: {
    byMeter:
      'Key on, at the head unit’s plug, against the battery minus post: constant feed and key feed both within 0.5 V of the battery?',
    without:
      'Key on: does the head unit’s screen stay dark, or go dark on bumps? Key off: look at its fuses, push its plug home.',
  },
  mends: ['unit', 'unit-leads', 'amp-supply'],
  article: 'how-the-signal-travels',
  remedy: (f) => ({
    what: `The head unit gets no plus on one of its feeds. ${follows(f)}`,
    background: 'One feed is always live and keeps its memory, one comes with the key. It wants both, and its ground.',
    numbers: [...feedsRead(f), FEED_NEAR],
    repair: [
      { do: 'renew-fuse', fuse: 'unit' },
      { do: 'renew-pin', plug: 'unit' },
      { do: 'seat-plug', plug: 'unit' },
    ],
    fix: [
      'Key off. Its fuses: one in each feed of the bike, and often one in the back of the unit itself. Strip burnt through: one new fuse of the printed number.',
      'It opens again: stop. A wire of that feed is on the frame.',
      'Its plug apart: a pin pushed back or green? Push it forward until it latches, or renew it.',
      'Plug home until it locks, loom tied so that nothing pulls.',
      'Battery posts tight? A clock set back says that the bike lost its volts, too.',
    ],
    tools: 'Small screwdriver, pin tool',
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    parts: ['One fuse of the printed number', 'A pin for its plug, if one does not latch'],
    notBuy: [
      f.rig.amps?.length === 0 ? 'An amplifier or speakers.' : 'An amplifier.',
      'A head unit, before both feeds were looked at.',
    ],
    cautions: ['minus-first'],
    proofOfCure: {
      byEar:
        'Within a minute of key on the screen lights and answers a button. It keeps its clock, and stays on while its loom is moved and on the next bumps.',
      byMeter: 'At its plug both feeds within 0.5 V of the battery while the wires are moved by hand.',
    },
  }),
};
