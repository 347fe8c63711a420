import type { Cause } from '../cause.ts';
import { healthyRemoteInWords, REMOTE_PARTS, remoteFigures, TOLD_NOTHING } from '../remote-wire.ts';
import { TEN_STARTS } from '../supply-ways.ts';
import { ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const remoteWireOpen: Cause = {
  id: 'remote-wire-open',
  title: (f) => `The remote wire of ${ampName(f)} is open`,
  faults: ['remote-wire-open'],
  split: {
    byMeter: 'Head unit on, against the battery minus post: volts where the remote wire begins, none at the amplifier?',
    without:
      'Head unit on: an LED test lamp lights where the remote wire begins, and not at the amplifier’s remote terminal?',
  },
  mends: ['amp-supply', 'unit-leads'],
  remedy: (f) => ({
    what: `The thin remote wire is open: out of its terminal, broken, or its tap makes no contact. Nothing tells ${ampName(f)} to come on.`,
    numbers: remoteFigures(f),
    repair: [{ do: 'renew-wire', wire: 'remote' }],
    fix: [
      'Key off. The amplifier’s own remote terminal first: is the wire in it, bare copper under the screw, and held when you pull?',
      'Then its other end: a tap that never bit through the insulation is the usual place.',
      'Then where it bends: steering, seat hinge, grommets. Pull gently: where it stretches the copper is gone.',
      'New wire past the bad place: soldered or sealed crimp, sleeve, strain relief. A 1 A fuse at its start.',
    ],
    tools: 'Crimp tool',
    minutes: 30,
    who: FITTER,
    parts: REMOTE_PARTS,
    notBuy: [TOLD_NOTHING, 'A reflash: it does not mend a wire.'],
    cautions: ['key-off', 'data'],
    proofOfCure: {
      byEar: `${TEN_STARTS} Steering from lock to lock: it stays on.`,
      byMeter: `Head unit on: ${healthyRemoteInWords(f)} on the remote terminal, against the battery minus post, while the wire is moved.`,
    },
  }),
};
