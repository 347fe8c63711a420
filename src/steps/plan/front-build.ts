import { ampDriving, withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const frontBuild: RigStep<'unit' | 'amp'> = rigQuestion({
  place: 'plan',
  id: 'front-build',
  short: 'Front driven by',
  ask: 'When the job is done, what drives the front speakers?',
  phone: 'When it is all done: are the front speakers on the radio itself, or on an amplifier?',
  how: [
    'Follow the wires from the speaker, or ask whoever fits it. What counts is how it is really wired, not the plan.',
  ],
  why: 'An amplified profile lowers every output. A pair left on the head unit then plays quietly.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { unit: 'The head unit', amp: 'An amplifier' },
  outcomes: { unit: 'the head unit', amp: 'an amplifier' },
  known: (rig) => rig.frontFedBy ?? (ampDriving(rig, 'front') ? 'amp' : undefined),
  learn: (frontFedBy, rig) => withKnown(rig, { frontFedBy }),
});
