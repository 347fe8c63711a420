import { withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const unitKind: RigStep<'factory' | 'replaced'> = rigQuestion({
  place: 'fitted',
  id: 'unit-kind',
  short: 'Head unit',
  ask: 'Is the head unit the one the bike was built with?',
  phone: 'Is the radio in the dash the one the bike came with, or has somebody fitted another one?',
  how: [
    'Look at the start screen and the surround. A replaced unit often shows its own maker’s name and has an adapter frame round it.',
  ],
  why: 'Only a factory head unit has stored output profiles. A replaced one has its own menu, so there is nothing to reflash.',
  tool: 'none',
  minutes: 0.3,
  observes: [],
  options: { factory: 'Yes, the factory one', replaced: 'No, it was replaced' },
  outcomes: { factory: 'factory', replaced: 'replaced' },
  ifCannot: 'Not sure? Carry on, and send a photo of its screen to somebody who knows.',
  article: 'what-a-reflash-is',
  known: (rig) => rig.unitKind,
  learn: (unit, rig) => withKnown(rig, { unitKind: unit }),
});
