import { withKnown } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type RigStep, rigQuestion } from '../step.ts';
import { concernsAxle } from '../told/silent-side.ts';

export const rearRating: RigStep<'2' | '4' | '8'> = rigQuestion({
  place: 'fitted',
  id: 'rear-rating',
  short: 'Rear speaker rating',
  ask: 'How many ohms is one rear speaker rated at?',
  phone: 'What is printed on the rear speaker, or on its box: 2 ohm, 4 ohm or 8 ohm?',
  how: ['Look at the magnet, the box or the papers. Not sure? Skip it: the healthy band just gets wider.'],
  why: 'A healthy coil reads 0.7 to 0.95 of its rated ohms on a meter.',
  tool: 'none',
  minutes: 0.5,
  // The rating widens or narrows the band of a reading: without a meter there is none.
  sensible: (f) => !is(f, 'tools-at-hand', 'none') && concernsAxle(f, 'rear'),
  observes: [],
  options: { '2': '2 Ω', '4': '4 Ω', '8': '8 Ω' },
  outcomes: { '2': '2 Ω', '4': '4 Ω', '8': '8 Ω' },
  ifCannot: 'We assume 2 to 4 Ω, and the healthy band gets wider.',
  article: 'read-a-coil-in-ohms',
  known: (rig) =>
    rig.rearRatedOhm === undefined ? undefined : rig.rearRatedOhm < 3 ? '2' : rig.rearRatedOhm < 6 ? '4' : '8',
  learn: (ohms, rig) => withKnown(rig, { rearRatedOhm: Number(ohms) }),
});
