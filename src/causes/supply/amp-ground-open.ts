import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { copper } from '../copper.ts';
import type { Figure } from '../figure.ts';
import { groundLeadM2, groundLeadParts } from '../new-leads.ts';
import { readsForLead } from '../read-first.ts';
import { healthyFigure, healthyInWords, LAMP_NEEDS, LAMP_ON, TEN_STARTS } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

function readGround(f: Findings): readonly Figure[] {
  const { groundV } = f.values('amp-terminals');
  if (groundV === undefined) return [];
  return [
    { id: 'ground-read', label: 'Its ground against battery negative, as read', value: groundV, unit: 'V', digits: 3 },
  ];
}

export const ampGroundOpen: Cause = {
  id: 'amp-ground-open',
  title: (f) => `The ground of ${ampName(f)} is open`,
  faults: ['amp-ground-open'],
  split: {
    byMeter: 'Red on the amplifier’s ground, black on the battery negative post: near zero, or near the battery?',
    without: 'Key off, battery negative off: pull gently at both ends of its ground lead. Does one pull out?',
    cautions: ['minus-first', 'battery-gas', 'cranking'],
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `${AmpName(f)} has no return path to the battery: its ground is open.`,
    background:
      'Measured against its own ground, a good positive and a good remote wire look dead. A line-level lead’s shield may carry the current instead, and burn.',
    numbers: [...readGround(f), healthyFigure(f, 'ground')],
    readFirst: readsForLead(f).filter((read) => read === 'plus-lead'),
    repair: [{ do: 'renew-lead', lead: 'ground', sectionM2: groundLeadM2(f), noThinnerThan: 'plus-lead' }],
    fix: [
      'Key off, main fuse out, battery negative off. Line-level plugs out of the amplifier.',
      'Follow the old ground: the ring has come off, the crimp has pulled out, or it is bolted to paint or a rubber-mounted part.',
      `Run the ground to the battery negative post: ${copper(groundLeadM2(f))}, and never thinner than the section on the jacket of the positive lead. Rings crimped and sealed, no fuse in it.`,
      'Check the line-level leads’ shields and plugs before they go back: they may be burnt.',
      'Battery negative on, main fuse last.',
    ],
    tools: 'Crimp tool, spanner',
    minutes: 30,
    who: FITTER,
    parts: groundLeadParts(f),
    notBuy: ['An amplifier, a fuse or a reflash: all it lacks is its ground.'],
    ifDoneAnyway:
      'A fuse in the ground lead hides the fault: when it opens, the shields of the signal leads carry the current.',
    proofOfCure: {
      byEar: TEN_STARTS,
      byMeter: `${LAMP_ON}: ${healthyInWords(f, 'ground')} from the amplifier’s ground to the battery negative post.`,
      ...LAMP_NEEDS,
    },
  }),
};
