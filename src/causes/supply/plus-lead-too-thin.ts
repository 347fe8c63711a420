import { drawFigures } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import {
  beforeTheLead,
  newPlusLead,
  plusLeadFigures,
  plusLeadInWords,
  plusLeadParts,
  SEALED_HOLDER,
} from '../new-leads.ts';
import { readsForLead } from '../read-first.ts';
import { CUT_OUT, healthyInWords, LAMP_NEEDS, LAMP_ON, MINUS_BACK, readFigures, TEN_LOUD } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const plusLeadTooThin: Cause = {
  id: 'plus-lead-too-thin',
  title: (f) => `The positive lead of ${ampName(f)} is too thin or not all copper`,
  faults: ['plus-lead-too-thin', 'plus-lead-clad'],
  split: {
    byMeter: `${LAMP_ON}: are most of the lost volts between the fuse and the amplifier’s positive?`,
    ...LAMP_NEEDS,
    without:
      'Key off: read the section off the jacket of the positive lead, scratch a strand. Silver under the red: aluminium.',
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `${AmpName(f)} loses volts in its positive lead: too little copper, or aluminium under a copper skin.`,
    background:
      'Copper-clad aluminium has about 1.6 times the resistance of copper and carries a third less. From outside they look alike.',
    numbers: [...plusLeadFigures(f), ...readFigures(f, 'plus'), ...drawFigures(f), CUT_OUT],
    readFirst: readsForLead(f),
    repair: [{ do: 'renew-lead', lead: 'plus', ...newPlusLead(f) }],
    fix: [
      ...beforeTheLead(f),
      'Key off, main fuse out, battery negative off.',
      `One lead of ${plusLeadInWords(f)}, from the battery post straight to the amplifier. Lead and fuse go together.`,
      'The fuse sits within a hand’s width of the battery. Grommets at edges, slack at the steering.',
      'Check the ground lead: it carries the same current and needs the same section.',
      MINUS_BACK,
    ],
    tools: 'Crimp tool, spanner',
    minutes: 60,
    who: FITTER,
    parts: [...plusLeadParts(f), SEALED_HOLDER],
    notBuy: [
      'A bigger fuse on the old lead.',
      'Copper-clad aluminium, however thick it looks.',
      'A capacitor or an amplifier.',
    ],
    proofOfCure: {
      byEar: TEN_LOUD,
      byMeter: `${LAMP_ON}: ${healthyInWords(f, 'plus')} from the battery positive post to the amplifier’s positive.`,
      ...LAMP_NEEDS,
    },
  }),
};
