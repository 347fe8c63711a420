import { withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const batteryKind: RigStep<'lead' | 'lithium'> = rigQuestion({
  place: 'fitted',
  id: 'battery-kind',
  short: 'Kind of battery',
  ask: 'Is the battery lead-acid or lithium?',
  phone: 'Read me what is printed on the battery: AGM, gel or acid, or lithium or Li? Is it very light?',
  how: [
    'Printed on its top or its side: AGM, gel, acid, or lithium, Li, LiFePO4.',
    'A lithium battery weighs a third of a lead-acid one of the same size.',
  ],
  why: 'A lithium battery protects itself: when empty or overloaded it switches itself off, and everything with it.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { lead: 'Lead-acid: acid, AGM or gel', lithium: 'Lithium' },
  outcomes: { lead: 'lead-acid', lithium: 'lithium' },
  ifCannot: 'We assume lead-acid.',
  known: (rig) => rig.batteryKind,
  learn: (kind, rig) => withKnown(rig, { batteryKind: kind }),
});
