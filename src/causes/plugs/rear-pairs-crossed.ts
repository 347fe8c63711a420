import type { Cause } from '../cause.ts';
import { coilFigure } from '../runs/run-figures.ts';
import { FITTER } from '../who.ts';

export const rearPairsCrossed: Cause = {
  id: 'rear-pairs-crossed',
  title: 'Wires of the two rear pairs crossed',
  faults: ['rear-pairs-crossed'],
  split: {
    byMeter:
      'Key off, rear plug apart, meter on ohms: does a coil read from a wire of the left pair to a wire of the right pair?',
    needs: ['meter-on-ohms'],
    without: 'Does the rear play a track that differs left and right, but not a mono track?',
  },
  mends: ['unit-leads', 'run'],
  article: 'measure-a-speaker-pair',
  remedy: (f) => ({
    what: 'The wires of the two rear pairs are crossed, so a rear speaker sits across wires that do not belong together.',
    background:
      'Across the two positives or the two negatives, whatever is the same on both sides cancels, so speech and bass are gone. With the negatives swapped, each plays half of both sides. With the sides swapped, only the balance works backwards.',
    numbers: [coilFigure(f)],
    repair: [{ do: 'uncross-pairs' }],
    fix: [
      'Key off, rear plug apart, meter on ohms: which two wires on the speaker side read as a coil? Mark left and right.',
      'Follow the wires from the source to that plug: check the colours on both sides of every joint, adapter and tap.',
      'Rejoin them: left positive and left negative to the left speaker, right positive and right negative to the right one.',
      'Meter on ohms before the plug goes back: no wire to the frame, none from one pair to the other.',
    ],
    tools: 'Meter, crimp tool, marker tape',
    minutes: 40,
    who: FITTER,
    parts: ['Sealed crimps or pins for four wires'],
    notBuy: ['Speakers, an amplifier or a reflash: it all works, into the wrong wires.'],
    ifDoneAnyway: 'Touching a wire to the frame “to find its partner” shorts an output.',
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar:
        'A mono track plays on both rear speakers. Balance to the left: only the left one, and the other way round.',
      byMeter:
        'Key off, plug apart: each rear pair reads its own coil, and no wire of one pair reads a coil to the other.',
    },
  }),
};
