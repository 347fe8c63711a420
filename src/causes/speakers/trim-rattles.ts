import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const trimRattles: Cause = {
  id: 'trim-rattles',
  title: 'A panel, the screen or a lid buzzes along',
  faults: ['trim-rattles'],
  split: {
    byMeter:
      'A meter won’t find it. The 80 Hz tone low, and a flat hand on fairing panels, screen, dash and lids, one after the other: does the buzz stop?',
    needs: ['tone-80'],
    without:
      'A low hum, and a flat hand on fairing panels, screen, dash and lids, one after the other: does the buzz stop?',
    asStep: { without: 'panel-press' },
  },
  mends: ['speaker'],
  article: 'where-it-turns-ugly',
  remedy: () => ({
    what: 'Something near the speakers is loose and buzzes along with the bass.',
    background:
      'Bass shakes panels, brackets, lid linings and whatever lies in the cases. After work on the fairing a screw or a clip is often left out.',
    numbers: [],
    repair: [{ do: 'fasten-trim' }],
    fix: [
      'Cases and glovebox empty, and once more: does it still buzz?',
      'Find it with a flat hand while the 80 Hz tone hums low: fairing panels, screen and its bracket, dash, lid linings, number plate.',
      'Key off. Tighten what holds it, evenly and no further than it was made for. Fit the screw or the clip that is missing.',
      'Two parts that touch: a strip of foam tape between them. A lead that knocks: a cable tie.',
    ],
    tools: 'Screwdriver, foam tape, cable ties',
    minutes: 20,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, while a hand on a panel stops it.', 'An amplifier or a reflash.'],
    cautions: ['loud-tone'],
    proofOfCure: { byEar: 'The 80 Hz tone, low, from zero up: no buzz, with no hand anywhere.' },
  }),
};
