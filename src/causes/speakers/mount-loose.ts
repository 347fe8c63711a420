import type { Cause } from '../cause.ts';
import { onePlaced, Placed, uglySpeakers } from '../where.ts';
import { YOURSELF } from '../who.ts';

export const mountLoose: Cause = {
  id: 'mount-loose',
  title: (f) => Placed(uglySpeakers(f), 'speaker loose in its mount'),
  faults: ['speaker-mount-loose@front', 'speaker-mount-loose@rear'],
  provedBy: ['panel-press', 'cone-press'],
  split: {
    byMeter:
      'A meter won’t find it. A hand on frame, grille and lid while the 80 Hz tone hums low: does the buzz stop?',
    needs: ['tone-80'],
    without: 'A low hum, and a hand pressed on frame, grille and lid, one after the other: does the buzz stop?',
    asStep: { without: 'panel-press' },
  },
  mends: ['speaker'],
  article: 'where-it-turns-ugly',
  remedy: (f) => ({
    what: `${onePlaced(uglySpeakers(f), 'speaker')} or something next to it is loose, or there is a gap around it.`,
    background:
      'Adapter rings, thin lids and a missing gasket let it buzz. A gap also lets the back wave cancel bass below about 200 Hz.',
    numbers: [],
    repair: [{ do: 'seal-mount', where: uglySpeakers(f) }],
    fix: [
      'Key off, grille off. Tighten the screws evenly, crosswise. No screw longer than its boss, or it comes out through the lid.',
      'A gap or no gasket: foam tape all round under the frame.',
      'Wires, plugs and lid linings nearby: foam tape or a cable tie on whatever can touch.',
      'Grille back on: put a hand on it while it plays. Foam tape where it touches.',
    ],
    tools: 'Screwdriver, foam tape',
    minutes: 30,
    who: YOURSELF,
    parts: ['Foam tape'],
    notBuy: ['A speaker, before this one sits tight.', 'An amplifier or a reflash.'],
    cautions: ['loud-tone', 'warranty'],
    proofOfCure: { byEar: 'The 80 Hz tone, low, from zero up: no buzz, and pressing at the frame changes nothing.' },
  }),
};
