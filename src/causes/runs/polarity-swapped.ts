import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

const isPairAgainstPair = (f: Findings): boolean => is(f, 'ends-compare', 'between');
/** Where the wires are turned: the pair that the ends of fader and balance showed, or whichever cones move in. */
const placeOfIt = (f: Findings): 'front' | 'rear' | 'all' =>
  is(f, 'ends-compare', 'rear', 'between') ? 'rear' : is(f, 'ends-compare', 'front') ? 'front' : 'all';

const AT_THE_ENDS = 'Turn the balance, then the fader, from the middle to an end: does the bass come back there?';

export const polaritySwapped: Cause = {
  id: 'polarity-swapped',
  title: 'Positive and negative swapped at a speaker',
  faults: ['polarity-one-of-pair', 'polarity-front-rear'],
  split: {
    byMeter: AT_THE_ENDS,
    without: AT_THE_ENDS,
    asStep: { byMeter: 'ends-compare', without: 'ends-compare' },
  },
  mends: ['run'],
  article: 'polarity',
  remedy: (f) => ({
    what: isPairAgainstPair(f)
      ? 'The rear pair pushes while the front pair pulls: positive and negative are swapped for one pair.'
      : `One ${placeOfIt(f) === 'all' ? '' : `${placeOfIt(f)} `}speaker pushes while its partner pulls: positive and negative are swapped at one of them.`,
    background: 'Nothing is broken. Two equal waves against each other leave next to nothing of the bass.',
    numbers: [],
    repair: [{ do: 'turn-polarity', where: placeOfIt(f) }],
    fix: [
      'Key off, plug of the pair apart. Touch a 1.5 V cell to its two wires, plus on positive, half a second, and watch the cone.',
      isPairAgainstPair(f)
        ? 'Do it front and rear. Healthy cones move out. Swap the two wires of each rear speaker, at one end of its run only.'
        : 'Do it left and right. Healthy cones move out. At the one that moves in, swap the two wires, at one end of its run only.',
      'Mark the wire, so that nobody swaps it back.',
    ],
    tools: 'A 1.5 V cell, tape',
    minutes: 15,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: more bass into this stays as thin.'],
    cautions: ['cell'],
    proofOfCure: {
      byEar:
        'Fader and balance in the middle: the bass sounds as full as at their ends, and voices come from in front of you.',
    },
  }),
};
