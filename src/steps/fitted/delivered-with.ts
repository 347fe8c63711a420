import { withKnown } from '../../rig/rig.ts';
import { is } from '../outcome.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const deliveredWith: RigStep<'two' | 'four'> = rigQuestion({
  place: 'fitted',
  id: 'delivered-with',
  short: 'Built with',
  ask: 'Did this bike leave the factory with rear speakers?',
  phone: 'When the bike was new, did it already have speakers in the back, or only in the front?',
  how: ['Think of the brochure, or ask for the model’s equipment list. Lids with speakers are often added later.'],
  why: 'A bike built with front speakers only leaves the factory with its rear channels switched off. Nothing is broken then: nobody has switched them on.',
  tool: 'none',
  minutes: 0.3,
  sensible: (f) => !is(f, 'unit-kind', 'replaced'),
  observes: [],
  options: { two: 'No, front only', four: 'Yes, front and rear' },
  outcomes: { two: 'front speakers only', four: 'front and rear speakers' },
  known: (rig) => rig.deliveredWith,
  learn: (speakers, rig) => withKnown(rig, { deliveredWith: speakers }),
});
