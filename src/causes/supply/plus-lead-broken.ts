import type { Cause } from '../cause.ts';
import { beforeTheLead, newPlusLead, plusLeadFigures, plusLeadInWords, plusLeadParts } from '../new-leads.ts';
import { readsForLead } from '../read-first.ts';
import { healthyFigure, healthyInWords, LAMP_NEEDS, LAMP_ON, MINUS_BACK, readFigures } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const plusLeadBroken: Cause = {
  id: 'plus-lead-broken',
  title: (f) => `The positive lead of ${ampName(f)} is broken`,
  faults: ['plus-lead-broken'],
  split: {
    byMeter:
      'Fuse in, against the battery negative post: volts on the amplifier end of the fuse, but few or none on the amplifier’s positive?',
    touches: ['fuse-out'],
    without:
      'Key off, main fuse out: bend the positive lead along its length and tug its ends. Does it give, or slip in a crimp?',
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `The positive lead of ${ampName(f)} is broken after its fuse: in a crimp, a splice, a switch, or inside its jacket.`,
    background: `${AmpName(f)} then has a good fuse but no supply. A single strand left still shows full battery volts on a meter.`,
    numbers: [...plusLeadFigures(f), ...readFigures(f, 'plus'), healthyFigure(f, 'plus')],
    readFirst: readsForLead(f),
    repair: [{ do: 'renew-lead', lead: 'plus', ...newPlusLead(f) }],
    fix: [
      'Follow the lead from its fuse to the amplifier first. Is there a cut-off switch, a second fuse or a splice block in it? Switch on, fuse whole, screws tight: does it come on now? Then it needs no new lead.',
      ...beforeTheLead(f),
      'Key off, main fuse out, battery negative off.',
      'Pull the old lead out and see where it broke: route the new one clear of that edge, with slack.',
      `New lead from the fuse to the amplifier: ${plusLeadInWords(f)}. No splices.`,
      MINUS_BACK,
    ],
    tools: 'Crimp tool, spanner',
    minutes: 60,
    who: FITTER,
    parts: plusLeadParts(f),
    notBuy: ['An amplifier: it had no supply.', 'A fuse alone: the break is in the lead.'],
    proofOfCure: {
      byEar:
        'The amplifier comes on. Steering from lock to lock, seat loaded, lead moved by hand: its light does not flicker.',
      byMeter: `${LAMP_ON}: ${healthyInWords(f, 'plus')} from the battery positive post to the amplifier’s positive, steady while the lead is moved.`,
      ...LAMP_NEEDS,
    },
  }),
};
