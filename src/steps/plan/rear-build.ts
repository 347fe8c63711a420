import { ampDriving, withKnown, without } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export const rearBuild: RigStep<'none' | 'unit' | 'amp'> = rigQuestion({
  place: 'plan',
  id: 'rear-build',
  short: 'Rear driven by',
  ask: 'When the job is done, are there rear speakers, and what drives them?',
  phone: 'When it is all done: are there speakers in the back, and are they on the radio or on an amplifier?',
  how: ['Lids, saddlebags, top case, trunk and passenger pods all count as rear.'],
  why: 'Rear speakers on the head unit need its rear channels switched on. No amplifier is needed for that.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { none: 'No rear speakers', unit: 'Yes, on the head unit', amp: 'Yes, on an amplifier' },
  outcomes: { none: 'no rear speakers', unit: 'the head unit', amp: 'an amplifier' },
  known: (rig) => {
    if (rig.rearFitted === 'no') return 'none';
    return rig.rearFedBy ?? (ampDriving(rig, 'rear') ? 'amp' : undefined);
  },
  learn: (rear, rig) =>
    rear === 'none'
      ? withKnown(without(rig, 'rearFedBy'), { rearFitted: 'no' })
      : withKnown(rig, { rearFitted: 'yes', rearFedBy: rear }),
});
