import { is } from '../../steps/outcome.ts';
import { NEARLY_EMPTY } from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { healthyRemoteInWords, REMOTE_PARTS, remoteFigures, SWITCHED_FEED, TOLD_NOTHING } from '../remote-wire.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const remoteVoltsLow: Cause = {
  id: 'remote-volts-low',
  title: (f) => `Too few volts on the remote wire of ${ampName(f)}`,
  faults: ['remote-volts-low'],
  split: {
    byMeter:
      'Head unit on, remote wire on the amplifier, against the battery minus post: too few volts where the wire begins, too?',
    without:
      'Remote wire off and taped, a lead with a 1 A fuse from the amplifier’s plus to its remote for five seconds: awake now, though an LED test lamp lit at its wire?',
    cautions: ['jumper'],
  },
  mends: ['amp-supply', 'unit-leads'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: is(f, 'remote-source', 'live')
      ? `Too few volts reach the remote terminal of ${ampName(f)}: it does not come on by them, or lets go when its supply dips.`
      : `The feed of the remote wire gives too little: ${ampName(f)} does not come on by it, or lets go when its supply dips.`,
    background:
      'The usual reasons: a dimmed lamp feed that pulses, or one small output that feeds several devices. A meter cannot show that a feed flickers.',
    numbers: remoteFigures(f),
    repair: [{ do: 'move-remote', to: 'switched-feed' }],
    fix: [
      `The battery ${NEARLY_EMPTY}? Charge it first, and read the wire again.`,
      'Key off. Remote wire off the point that it is tapped from, the end there taped.',
      SWITCHED_FEED,
      'Never a lamp that can be dimmed. Several amplifiers on one output: let it switch a relay, and the relay the amplifiers.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 40,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [TOLD_NOTHING, 'A battery, while the posts read well.'],
    cautions: ['battery-gas', 'own-charger'],
    proofOfCure: {
      byEar: `${TEN_STARTS} ${AmpName(f)} stays on for ten loud minutes.`,
      byMeter: `Head unit on, music loud: ${healthyRemoteInWords(f)} on the remote terminal, against the battery minus post.`,
    },
  }),
};
