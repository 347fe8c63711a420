import { is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { healthyRemoteInWords, REMOTE_PARTS, remoteFigures, SWITCHED_FEED, TOLD_NOTHING } from '../remote-wire.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

/** For whoever found its start dead: why it is. */
const FEED = {
  byMeter:
    'Key off: is the fuse of the feed it is tapped off whole? Then turn the key through all positions: does one give it volts?',
  without:
    'Key off: is the fuse of the feed it is tapped off whole? Then turn the key through all positions: does the LED lamp light in one?',
};

export const remoteSourceDead: Cause = {
  id: 'remote-source-dead',
  title: (f) => `The remote wire of ${ampName(f)} is tapped off a dead or wrong feed`,
  faults: ['remote-source-dead'],
  split: (f) => {
    if (is(f, 'remote-source', 'dead') || is(f, 'remote-start-lamp', 'dark')) return FEED;
    return {
      byMeter: 'Head unit on, red where the remote wire starts, black on the battery negative post: no volts?',
      needs: ['head-unit-playing'],
      without: 'Head unit on: does an LED test lamp stay dark where the remote wire starts?',
    };
  },
  mends: ['amp-supply', 'unit-leads', 'unit'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: `The remote wire of ${ampName(f)} is tapped off a point with no volts while the head unit is on.`,
    background:
      'A blown accessory fuse, an alarm or a relay in that feed that does not close, the wrong pin, or a feed that is live only in another key position. Not every head unit has a remote output.',
    numbers: remoteFigures(f),
    repair: [{ do: 'move-remote', to: 'switched-feed' }],
    fix: [
      'Key off. Check that feed’s accessory fuse first: pushed home and whole? Did a socket or a charger stop with it?',
      'Take the remote wire off that point and tape the end.',
      SWITCHED_FEED,
      'More than one amplifier, or a relay, already on that output? Then fit a separate relay: an output gives only a few tenths of an amp.',
    ],
    tools: 'Meter or LED test lamp, crimp tool',
    minutes: 40,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [TOLD_NOTHING],
    ifDoneAnyway: 'Straight to the battery it works at once, and flattens the battery in a night or two.',
    proofOfCure: {
      byEar: `${TEN_STARTS} Ten minutes after key off its light is out.`,
      byMeter: `Head unit on: ${healthyRemoteInWords(f)} on the remote terminal, in every key position in which music plays. Ten minutes after key off: below 0.5 V.`,
      needs: ['head-unit-playing'],
    },
  }),
};
