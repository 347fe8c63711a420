import { ampDriving, withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const frontBuild: RigStep<'unit' | 'amp'> = rigQuestion({
  place: 'plan',
  id: 'front-build',
  short: 'Front driven by',
  ask: 'When it is finished, what drives the front speakers?',
  phone: 'When all is done: do the front speakers hang on the radio itself, or on an amplifier?',
  how: [
    'Follow the wires from the speaker, or ask who fits it. Speakers at the ends of their wires decide, not the plan.',
  ],
  why: 'An amplified profile lowers every output. A pair that stays on the head unit then plays quietly.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { unit: 'The head unit', amp: 'An amplifier' },
  outcomes: { unit: 'the head unit', amp: 'an amplifier' },
  known: (rig) => rig.frontFedBy ?? (ampDriving(rig, 'front') ? 'amp' : undefined),
  learn: (frontFedBy, rig) => withKnown(rig, { frontFedBy }),
});
