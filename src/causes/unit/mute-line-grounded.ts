import type { Cause } from '../cause.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const muteLineGrounded: Cause = {
  id: 'mute-line-grounded',
  title: 'The mute wire of the head unit is on ground',
  faults: ['mute-line-grounded'],
  split: {
    byMeter:
      'Key off, head unit’s plug apart, meter on ohms: its mute wire, in the loom, to bare frame metal: below 100 Ω?',
    needs: ['meter-on-ohms'],
    without:
      'Does its screen stay on mute, or in a call, with every phone switched off? Does it have a mute wire, and where does that end?',
  },
  mends: ['unit', 'unit-leads'],
  article: 'no-sound-at-all',
  remedy: () => ({
    what: 'The mute wire keeps the head unit silent: it touches ground, or a kit on it does.',
    background:
      'Many replaced head units have a thin mute wire, meant for a hands-free kit. On ground it says that somebody is on the telephone, and the head unit keeps silent.',
    numbers: [],
    repair: [{ do: 'isolate-mute-line' }],
    fix: [
      'Find it in the papers of the head unit: a single thin wire marked mute, in the loom or on the adapter.',
      'Key off. No hands-free kit on it? Take it off whatever it is joined to, and tape the end of the mute wire.',
      'A kit that is used? Leave that off first: does it play? Then the kit holds it, or its wire is pinched on the way.',
      'Loom tied so that the end touches no metal.',
    ],
    tools: 'Side cutters, tape',
    minutes: 20,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['A head unit: it does as it is told.', 'An amplifier, speakers or a reflash.'],
    proofOfCure: {
      byEar: 'It plays from every source, and still does when the loom is moved and after key off and on.',
    },
  }),
};
