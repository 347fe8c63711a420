import { is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { healthyRemoteInWords, REMOTE_PARTS, remoteFigures, SWITCHED_FEED, TOLD_NOTHING } from '../remote-wire.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

/** For whoever found its start dead: why it is. */
const FEED = {
  byMeter:
    'Key off: is the fuse of the feed that it is tapped from whole? Then, key turned through all positions: does one give it volts?',
  without:
    'Key off: is the fuse of the feed that it is tapped from whole? Then, key turned through all positions: does the LED lamp light in one?',
};

export const remoteSourceDead: Cause = {
  id: 'remote-source-dead',
  title: (f) => `The remote wire of ${ampName(f)} is tapped from a dead or wrong feed`,
  faults: ['remote-source-dead'],
  split: (f) => {
    if (is(f, 'remote-source', 'dead') || is(f, 'remote-start-lamp', 'dark')) return FEED;
    return {
      byMeter: 'Head unit on, red where the remote wire begins, black on the battery minus post: no volts?',
      without: 'Head unit on: does an LED test lamp stay dark where the remote wire begins?',
    };
  },
  mends: ['amp-supply', 'unit-leads', 'unit'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: `The point that the remote wire of ${ampName(f)} is tapped from carries no volts while the head unit is on.`,
    background:
      'A blown accessory fuse, the wrong pin, or a feed that is live only in another position of the key. Not every head unit has a remote output.',
    numbers: remoteFigures(f),
    repair: [{ do: 'move-remote', to: 'switched-feed' }],
    fix: [
      'Key off. The accessory fuse of that feed first: home and whole? Did a socket or a charger stop with it?',
      'Remote wire off that point, its end there taped.',
      SWITCHED_FEED,
      'More than one amplifier or a relay hangs on that output? Then a relay of its own: an output gives some tenths of an ampere.',
    ],
    tools: 'Meter or LED test lamp, crimp tool',
    minutes: 40,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [TOLD_NOTHING],
    ifDoneAnyway: 'Straight to the battery it works at once, and empties the battery in a night or two.',
    proofOfCure: {
      byEar: `${TEN_STARTS} Ten minutes after key off its lamp is dark.`,
      byMeter: `Head unit on: ${healthyRemoteInWords(f)} on the remote terminal, in every position of the key in which music plays. Ten minutes after key off: below 0.5 V.`,
    },
  }),
};
