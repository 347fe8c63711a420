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
      'Head unit on, remote wire on the amplifier, against the battery negative post: too few volts where the wire starts too?',
    needs: ['head-unit-playing'],
    without:
      'Remote wire off and taped, a lead with a 1 A fuse from the amplifier’s positive to its remote for five seconds: awake now, though an LED test lamp lit on its wire?',
    cautions: ['jumper'],
  },
  mends: ['amp-supply', 'unit-leads'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: is(f, 'remote-source', 'live')
      ? `Too few volts reach the remote terminal of ${ampName(f)}: it does not come on, or cuts out when its supply dips.`
      : `The remote wire’s feed gives too little: ${ampName(f)} does not come on, or cuts out when its supply dips.`,
    background:
      'Usual causes: a dimmed lighting feed that pulses, or one small output feeding several devices. A meter cannot show that a feed is pulsing.',
    numbers: remoteFigures(f),
    repair: [{ do: 'move-remote', to: 'switched-feed' }],
    fix: [
      `The battery ${NEARLY_EMPTY}? Charge it first, then read the wire again.`,
      'Key off. Take the remote wire off the point it is tapped off, and tape that end.',
      SWITCHED_FEED,
      'Never use a dimmable lighting feed. Several amplifiers on one output: let it switch a relay, and the relay the amplifiers.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 40,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [TOLD_NOTHING, 'A battery, while the posts read healthy.'],
    cautions: ['battery-gas', 'own-charger'],
    proofOfCure: {
      byEar: `${TEN_STARTS} ${AmpName(f)} stays on for ten loud minutes.`,
      byMeter: `Head unit on, music loud: ${healthyRemoteInWords(f)} on the remote terminal, against the battery negative post.`,
      needs: ['head-unit-playing'],
    },
  }),
};
