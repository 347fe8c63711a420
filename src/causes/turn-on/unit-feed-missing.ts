import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { type Figure, voltsRead } from '../figure.ts';
import { AmpName } from '../the-amp.ts';
import { FEED_NEAR } from '../unit/feed-near.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

/** What is silent because of it. */
const follows = (f: Findings): string =>
  f.rig.amps?.length === 0 ? 'Nothing can play without it.' : `${AmpName(f)} follows it, so it is right to stay off.`;

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
      'Key on, at the head unit’s plug, against the battery negative post: is the constant feed or the key feed more than 0.5 V below the battery?',
    needs: ['panel-off', 'key-on'],
    without:
      'Key on: does the head unit’s screen stay dark, or go dark on bumps? Key off: check its fuses, push its plug home.',
    asStep: { byMeter: 'unit-feeds' },
  },
  mends: ['unit', 'unit-leads', 'amp-supply'],
  article: 'how-the-signal-travels',
  remedy: (f) => ({
    what: `The head unit gets no supply on one of its feeds. ${follows(f)}`,
    background: 'One feed is always live and keeps its memory, one comes with the key. It needs both, and its ground.',
    numbers: [...feedsRead(f), FEED_NEAR],
    repair: [
      { do: 'renew-fuse', fuse: 'unit' },
      { do: 'renew-pin', plug: 'unit' },
      { do: 'seat-plug', plug: 'unit' },
    ],
    fix: [
      'Key off. Its fuses: one in each of the bike’s feeds, and often one in the back of the unit itself. Strip burnt through: fit one new fuse of the printed rating.',
      'All whole? Blades and sockets green or loose? Clean them, and close a slack socket a little: a whole fuse can still lose the feed.',
      'It blows again: stop. A wire of that feed is touching the frame.',
      'Its plug apart: a pin pushed back or green? Push it forward until it latches, or fit a new one.',
      'Plug home until it locks, loom tied so that nothing pulls.',
      'Battery posts tight? If the clock has reset, the whole bike lost its supply.',
    ],
    tools: 'Small screwdriver, pin tool',
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    parts: ['One fuse of the printed rating', 'A pin for its plug, if one does not latch'],
    notBuy: [
      f.rig.amps?.length === 0 ? 'An amplifier or speakers.' : 'An amplifier.',
      'A head unit, before both feeds have been checked.',
    ],
    cautions: ['minus-first'],
    proofOfCure: {
      byEar:
        'Within a minute of key on the screen lights up and responds to a button. It keeps its clock, and stays on when you move its loom and over the next bumps.',
      byMeter: 'At its plug both feeds within 0.5 V of the battery while the wires are moved by hand.',
    },
  }),
};
