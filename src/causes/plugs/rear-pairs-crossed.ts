import type { Cause } from '../cause.ts';
import { coilFigure } from '../runs/run-figures.ts';
import { FITTER } from '../who.ts';

export const rearPairsCrossed: Cause = {
  id: 'rear-pairs-crossed',
  title: 'Wires of the two rear pairs crossed',
  faults: ['rear-pairs-crossed'],
  split: {
    byMeter:
      'Key off, rear plug apart, meter on ohms: a coil from a wire of the left pair to a wire of the right pair?',
    needs: ['meter-on-ohms'],
    without: 'Balance to one side, a track that differs left and right: does the rear play it, and a mono track not?',
  },
  mends: ['unit-leads', 'run'],
  article: 'measure-a-speaker-pair',
  remedy: (f) => ({
    what: 'The wires of the two rear pairs are crossed, so a rear speaker hangs between wires that do not belong together.',
    background:
      'Plus with plus and minus with minus: what is the same on both sides is nothing between them, and speech and bass are gone. Each other’s minus: half of both sides. Sides changed: only the balance works backwards.',
    numbers: [coilFigure(f)],
    repair: [{ do: 'uncross-pairs' }],
    fix: [
      'Key off, rear plug apart, meter on ohms: which two wires on the speaker side read a coil? Mark left and right.',
      'Follow the wires from the source to that plug: colours on both sides of every joint, adapter and tap.',
      'Join them anew: left plus and left minus to the left speaker, right plus and right minus to the right one.',
      'Meter on ohms before the plug goes back: no wire on the frame, none of one pair to the other.',
    ],
    tools: 'Meter, crimp tool, marker tape',
    minutes: 40,
    who: FITTER,
    parts: ['Sealed crimps or pins for four wires'],
    notBuy: ['Speakers, an amplifier or a reflash: all of it plays, into the wrong wires.'],
    ifDoneAnyway: 'A wire that is tried on the frame “to find its partner” shorts an output.',
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar:
        'A mono track plays at both rear speakers. Balance to the left: only the left one, and the other way round.',
      byMeter:
        'Key off, plug apart: each rear pair reads its own coil, and no wire of one pair reads a coil to the other.',
    },
  }),
};
