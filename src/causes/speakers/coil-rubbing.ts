import { formatQuantity } from '../../compute/quantity.ts';
import { axleOf } from '../../rig/corner.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { Where } from '../repair-action.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { onePlaced, Placed, uglySpeakers } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

/** The rated ohms of what is exchanged, where they are known. */
function ratedInWords(f: Findings, where: Where): string {
  const rear = where === 'rear' || (where !== 'all' && where !== 'front' && axleOf(where) === 'rear');
  const rated = where === 'all' ? undefined : rear ? f.rig.rearRatedOhm : f.rig.frontRatedOhm;
  const printed = 'the ohms printed on the old one’s magnet';
  return rated === undefined ? printed : `${formatQuantity(rated, 'Ω')}, or ${printed}`;
}

export const coilRubbing: Cause = {
  id: 'coil-rubbing',
  title: (f) => Placed(uglySpeakers(f), 'speaker: coil rubs or cone torn'),
  faults: ['coil-rubbing-or-cone-torn'],
  provedBy: ['cone-press'],
  split: {
    byMeter:
      'Key off, its plug apart, meter on ohms: does its coil read like its partner’s, yet scrape under two thumbs?',
    needs: ['meter-on-ohms'],
    without:
      'Key off, grille off, two thumbs evenly either side of the centre, two millimetres: does it scrape like sand?',
    asStep: { without: 'cone-press' },
  },
  mends: ['speaker'],
  article: 'clipping-and-coils',
  remedy: (f) => ({
    what: `${onePlaced(uglySpeakers(f), 'speaker')} is damaged: its coil rubs, or its cone or surround is torn.`,
    background:
      'Too much travel, a mount that is not flat, sun or water can do that. A meter won’t show it: the coil is intact.',
    numbers: [],
    repair: [{ do: 'replace-speaker', where: uglySpeakers(f) }],
    fix: [
      'Loosen its screws evenly and listen again: a mount that is not flat bends the frame, and the coil rubs.',
      'Still scraping? Replace just that one: same size, kind and rated ohms. If you can’t get one, replace both sides of the pair.',
      'Flat mount, screws evenly tight, positive to positive, no terminal touching metal.',
      isWithoutAmp(f)
        ? 'Deal with what did it: bass a few steps down, and volume below where it distorts.'
        : 'Deal with what did it: high-pass on at 80 to 100 Hz, bass knob at zero, gain set by test tone.',
    ],
    tools: 'Screwdriver',
    minutes: 45,
    who: YOURSELF_OR_FITTER,
    parts: [`A speaker of the same size and kind, ${ratedInWords(f, uglySpeakers(f))}`],
    notBuy: ['The other speakers, as long as they play clean.', 'A reflash or an amplifier.'],
    cautions: ['loud-tone'],
    proofOfCure: {
      byEar:
        'The 80 Hz tone, low, from zero up: a round hum from that speaker and nothing else. Then music with bass at your usual volume: clean.',
    },
  }),
};
