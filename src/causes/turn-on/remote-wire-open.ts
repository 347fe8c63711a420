import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { healthyRemoteInWords, REMOTE_PARTS, remoteFigures, TOLD_NOTHING, weakAlongTheWire } from '../remote-wire.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

const CHECK = {
  byMeter:
    'Head unit on, against the battery minus post: the battery’s volts where the remote wire begins, none or few at the amplifier?',
  without:
    'Head unit on: an LED test lamp lights where the remote wire begins, and not, or only dimly, at the amplifier’s remote terminal?',
};
/** For whoever read both ends: what tells the tap from the rest of the wire. */
const ALONG_IT = {
  byMeter:
    'Head unit on, the wire left on the amplifier, against the battery minus post: past the tap, are the volts of its start still there?',
  without:
    'Head unit on: squeeze the tap, then bend the wire along its way. Does the amplifier come on, if only for a moment?',
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
      ? `The remote wire is good at its start and weak at ${ampName(f)}: its tap, or a joint in it, hardly conducts.`
      : `The thin remote wire is out of its terminal or broken, or its tap makes no good contact. Nothing, or too little, tells ${ampName(f)} to come on.`,
    background:
      'A green or half-made joint still shows full volts where nothing is drawn. At the little that a remote terminal draws most of them are lost in it.',
    numbers: remoteFigures(f),
    repair: [{ do: 'renew-wire', wire: 'remote' }],
    fix: [
      'Key off. The amplifier’s own remote terminal first: is the wire in it, bare copper under the screw, and held when you pull?',
      'Then the tap: a connector that never bit through the insulation, or a green splice, is the usual place.',
      'Then where it bends: steering, seat hinge, grommets. Pull gently: where it stretches the copper is gone.',
      'New joint, or new wire past the bad place: soldered or sealed crimp, sleeve, strain relief. A 1 A fuse at its start.',
    ],
    tools: 'Crimp tool',
    minutes: 30,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [TOLD_NOTHING, 'A reflash: it does not mend a wire.'],
    proofOfCure: {
      byEar: `${TEN_STARTS} Steering from lock to lock: it stays on.`,
      byMeter: `Head unit on: ${healthyRemoteInWords(f)} on the remote terminal, against the battery minus post, while the wire is moved.`,
    },
  }),
};
