import { withKnown } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const deliveredAmp: RigStep<'no' | 'yes'> = rigQuestion({
  place: 'fitted',
  id: 'delivered-amp',
  short: 'Amplifier from new',
  ask: 'Did this bike leave the factory with an amplifier?',
  phone: 'When the bike was new, did it already have an amplifier from the maker?',
  how: [
    'Think of the brochure, or ask for the model’s equipment list. Large sound packages often have one.',
    'One that the dealer fitted at the sale does not count as factory.',
  ],
  why: 'A bike built with an amplifier may have the lowered profile from new, and perhaps no other one.',
  tool: 'none',
  minutes: 0.3,
  sensible: (f) => !is(f, 'unit-kind', 'replaced'),
  observes: [],
  options: { no: 'No', yes: 'Yes, the bike maker’s own' },
  outcomes: { no: 'none from new', yes: 'from new' },
  ifCannot: 'We carry on without it, and rely less on “nobody ever changed it”.',
  article: 'what-a-reflash-is',
  known: (rig) => rig.deliveredAmp,
  learn: (amp, rig) => withKnown(rig, { deliveredAmp: amp }),
});
