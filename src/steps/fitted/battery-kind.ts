import { withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const batteryKind: RigStep<'lead' | 'lithium'> = rigQuestion({
  place: 'fitted',
  id: 'battery-kind',
  short: 'Kind of battery',
  ask: 'Is the battery a lead-acid or a lithium one?',
  phone: 'Read me what is printed on the battery: AGM, gel or acid, or does it say lithium, or Li? Is it very light?',
  how: [
    'Printed on its top or its side: AGM, gel, acid, or lithium, Li, LiFePO4.',
    'A lithium battery weighs a third of a lead-acid one of its size.',
  ],
  why: 'A lithium battery protects itself: it switches itself off when it is empty or overloaded, and everything with it.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { lead: 'Lead-acid: acid, AGM or gel', lithium: 'Lithium' },
  outcomes: { lead: 'lead-acid', lithium: 'lithium' },
  ifCannot: 'We take it as a lead-acid one.',
  known: (rig) => rig.batteryKind,
  learn: (kind, rig) => withKnown(rig, { batteryKind: kind }),
});
