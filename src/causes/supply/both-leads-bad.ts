import { drawFigures } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { copper } from '../copper.ts';
import {
  beforeTheLead,
  groundLeadM2,
  groundLeadParts,
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

export const bothLeadsBad: Cause = {
  id: 'both-leads-bad',
  title: (f) => `Positive lead and ground of ${ampName(f)} are both bad`,
  faults: ['both-leads-bad'],
  split: {
    byMeter: `${LAMP_ON}: are more volts lost than a good lead loses, on the positive path and on the ground path?`,
    ...LAMP_NEEDS,
    without:
      'Second leads from the battery, 4 mm² or more, the positive one with a 10 A fuse: does neither help alone, but both together do?',
    asStep: { without: 'temporary-leads' },
    cautions: ['minus-first', 'temporary-lead', 'fuse', 'battery-gas'],
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `${AmpName(f)} loses volts on both paths: positive lead and ground are both worn, thin or corroded.`,
    background: 'Either alone would only cost some volume. Together they pull the amplifier below its cut-out.',
    numbers: [
      ...plusLeadFigures(f),
      ...readFigures(f, 'plus'),
      ...readFigures(f, 'ground'),
      ...drawFigures(f),
      CUT_OUT,
    ],
    readFirst: readsForLead(f),
    repair: [
      { do: 'renew-lead', lead: 'plus', ...newPlusLead(f) },
      { do: 'renew-lead', lead: 'ground', sectionM2: groundLeadM2(f) },
    ],
    fix: [
      ...beforeTheLead(f),
      'Key off, main fuse out, battery negative off. Line-level plugs out of the amplifier.',
      `Positive: ${plusLeadInWords(f)}, from the battery post straight to the amplifier. Its fuse within a hand’s width of the battery.`,
      `Ground: ${copper(groundLeadM2(f))} straight to the battery negative post. No fuse in it.`,
      'Rings crimped and sealed, grommets at edges, slack at the steering.',
      MINUS_BACK,
    ],
    tools: 'Crimp tool, spanner',
    minutes: 90,
    who: FITTER,
    parts: [...plusLeadParts(f), SEALED_HOLDER, ...groundLeadParts(f)],
    notBuy: [
      'Only one of the two leads.',
      'Copper-clad aluminium, however thick it looks.',
      'An amplifier or a capacitor.',
    ],
    proofOfCure: {
      byEar: TEN_LOUD,
      byMeter: `${LAMP_ON}: ${healthyInWords(f, 'plus')} lost on the positive path and ${healthyInWords(f, 'ground')} on the ground path.`,
      ...LAMP_NEEDS,
    },
  }),
};
