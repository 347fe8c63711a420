import type { Cause } from '../cause.ts';
import { copper } from '../copper.ts';
import { groundLeadM2, groundLeadParts } from '../new-leads.ts';
import { healthyFigure, healthyInWords, LAMP_NEEDS, LAMP_ON, readFigures, TEN_LOUD } from '../supply-ways.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { FITTER } from '../who.ts';

export const sharedGroundScrew: Cause = {
  id: 'shared-ground-screw',
  title: (f) => `${AmpName(f)} shares a ground screw that makes poor contact`,
  faults: ['shared-ground-screw'],
  split: {
    byMeter: `${LAMP_ON}: does the ground of whatever shares its screw rise with it, against the battery negative post?`,
    ...LAMP_NEEDS,
    without:
      'Key off: follow its ground lead to the end. Are there other rings under the same screw, and do those devices act up with it?',
    asStep: { without: 'shared-screw' },
  },
  mends: ['amp-supply', 'unit-leads'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `The ground of ${ampName(f)} shares one screw with other grounds, and the screw makes poor contact: they lift each other.`,
    background:
      'Whatever one draws then lifts the ground of all: each goes silent or noisy with the others, and seems fine alone.',
    numbers: [...readFigures(f, 'ground'), healthyFigure(f, 'ground')],
    repair: [{ do: 'own-ground' }],
    fix: [
      'Key off, main fuse out, battery negative off. Line-level plugs out of the amplifier.',
      'Amplifier’s ring off the shared screw.',
      `Give it its own ground, straight to the battery negative post: ${copper(groundLeadM2(f))}, as thick as the positive lead. No fuse in it.`,
      'The shared screw: rings and metal bright, largest ring lowest, tight. Whatever stays on it needs a good ground too.',
      'Battery negative on, main fuse last.',
    ],
    tools: 'Crimp tool, scraper, spanner',
    minutes: 40,
    who: FITTER,
    parts: groundLeadParts(f),
    notBuy: ['An amplifier, a head unit or a battery.', 'A noise filter: it is the ground that moves.'],
    proofOfCure: {
      byEar: `${TEN_LOUD} Whatever acted up with it now works at the same time.`,
      byMeter: `${LAMP_ON}: ${healthyInWords(f, 'ground')} from the amplifier’s ground to the battery negative post, and the other grounds stay where they were.`,
      ...LAMP_NEEDS,
    },
  }),
};
