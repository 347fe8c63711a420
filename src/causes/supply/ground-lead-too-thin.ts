import type { Cause } from '../cause.ts';
import { copper } from '../copper.ts';
import { groundLeadM2, groundLeadParts } from '../new-leads.ts';
import { readsForLead } from '../read-first.ts';
import {
  CUT_OUT,
  healthyFigure,
  healthyInWords,
  LAMP_NEEDS,
  LAMP_ON,
  MINUS_BACK,
  readFigures,
  TEN_LOUD,
} from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const groundLeadTooThin: Cause = {
  id: 'ground-lead-too-thin',
  title: (f) => `The ground lead of ${ampName(f)} is too thin`,
  faults: ['ground-lead-too-thin'],
  split: {
    byMeter: `${LAMP_ON}: is most of what the ground loses between the copper at the lead’s two ends?`,
    ...LAMP_NEEDS,
    without: 'Key off: compare the sections on both jackets. Is the ground lead clearly thinner than the positive one?',
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `${AmpName(f)} loses volts in its ground lead: it is thinner than the positive one and carries the same current.`,
    background:
      'What goes in on positive comes back on ground. A thick positive lead is worth no more than its ground.',
    numbers: [...readFigures(f, 'ground'), healthyFigure(f, 'ground'), CUT_OUT],
    readFirst: readsForLead(f).filter((read) => read === 'plus-lead'),
    repair: [{ do: 'renew-lead', lead: 'ground', sectionM2: groundLeadM2(f), noThinnerThan: 'plus-lead' }],
    fix: [
      'Key off, main fuse out, battery negative off. Line-level plugs out of the amplifier.',
      `Run the ground to the battery negative post with a new lead: ${copper(groundLeadM2(f))}, and never thinner than the section on the jacket of the positive lead.`,
      'Rings crimped and sealed, bare metal under them, no fuse in it. Keep it as short as it can be.',
      MINUS_BACK,
    ],
    tools: 'Crimp tool, spanner',
    minutes: 30,
    who: FITTER,
    parts: groundLeadParts(f),
    notBuy: ['A thicker positive lead: it is not what loses the volts.', 'A capacitor, a battery or an amplifier.'],
    proofOfCure: {
      byEar: TEN_LOUD,
      byMeter: `${LAMP_ON}: ${healthyInWords(f, 'ground')} from the amplifier’s ground to the battery negative post.`,
      ...LAMP_NEEDS,
    },
  }),
};
