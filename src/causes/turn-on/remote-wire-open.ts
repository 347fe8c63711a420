import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause, Split } from '../cause.ts';
import { healthyRemoteInWords, REMOTE_PARTS, remoteFigures, TOLD_NOTHING, weakAlongTheWire } from '../remote-wire.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

const CHECK: Split = {
  byMeter:
    'Head unit on, against the battery negative post: battery volts where the remote wire starts, few or none at the amplifier?',
  needs: ['head-unit-playing'],
  without:
    'Head unit on: does an LED test lamp light where the remote wire starts, but not, or only dimly, at the amplifier’s remote terminal?',
};
/** For whoever read both ends: what tells the tap from the rest of the wire. */
const ALONG_IT: Split = {
  byMeter:
    'Head unit on, the wire left on the amplifier, against the battery negative post: just past the tap, are the full volts still there?',
  needs: ['head-unit-playing'],
  without:
    'Head unit on: squeeze the tap, then bend the wire along its length. Does the amplifier come on, if only for a moment?',
};
const readAtBothEnds = (f: Findings): boolean =>
  is(f, 'remote-source', 'live') || (is(f, 'remote-lamp', 'dark') && is(f, 'remote-start-lamp', 'lit'));

export const remoteWireOpen: Cause = {
  id: 'remote-wire-open',
  title: (f) => `The remote wire of ${ampName(f)} ${weakAlongTheWire(f) ? 'loses its volts' : 'is open'}`,
  faults: ['remote-wire-open'],
  split: (f) => (readAtBothEnds(f) ? ALONG_IT : CHECK),
  mends: ['amp-supply', 'unit-leads'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: weakAlongTheWire(f)
      ? `The remote wire is good at its start and weak at ${ampName(f)}: its tap, or a joint in it, barely conducts.`
      : `The thin remote wire is out of its terminal or broken, or its tap makes poor contact, so ${ampName(f)} is never told to come on.`,
    background:
      'A green or half-made joint still shows full volts with nothing drawn. At the little a remote terminal draws, it loses most of them.',
    numbers: remoteFigures(f),
    repair: [{ do: 'renew-wire', wire: 'remote' }],
    fix: [
      'Key off. The amplifier’s own remote terminal first: is the wire in it, bare copper under the screw, and does it hold when you tug it?',
      'Then the tap: a connector that never bit through the insulation, or a green splice, is the usual culprit.',
      'Then where it bends: steering, seat hinge, grommets. Pull gently: where it stretches, the copper is broken.',
      'New joint, or new wire past the bad spot: soldered or sealed crimp, sleeve, strain relief. A 1 A fuse where it starts.',
    ],
    tools: 'Crimp tool',
    minutes: 30,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [TOLD_NOTHING, 'A reflash: it won’t mend a wire.'],
    proofOfCure: {
      byEar: `${TEN_STARTS} Steering from lock to lock: it stays on.`,
      byMeter: `Head unit on: ${healthyRemoteInWords(f)} on the remote terminal, against the battery negative post, while the wire is moved.`,
      needs: ['head-unit-playing'],
    },
  }),
};
