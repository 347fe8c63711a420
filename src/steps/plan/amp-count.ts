import { type RigStep, rigQuestion } from '../step.ts';

const COUNTS = { '0': 0, '1': 1, '2': 2, '3': 3 } as const;

type Count = keyof typeof COUNTS;

export const ampCount: RigStep<Count> = rigQuestion({
  place: 'plan',
  id: 'amp-count',
  short: 'Amplifiers',
  ask: 'How many amplifiers will there be when the job is done?',
  phone: 'When everything is done, how many amplifiers are on the bike? Count the one the factory fitted, too.',
  how: [
    'Look under the seat, in the saddlebags, in the lids, behind the fairing and in the trunk.',
    'Every amplifier has a lead with a fuse from the battery. Count those leads.',
  ],
  why: 'An amplified profile only makes sense with an amplifier. With several, the fussiest one decides.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { '0': 'None', '1': 'One', '2': 'Two', '3': 'Three or more' },
  outcomes: { '0': 'none', '1': 'one', '2': 'two', '3': 'three or more' },
  ifCannot: 'Without it we ask what drives each pair.',
  known: (rig) => (rig.amps ? (String(Math.min(3, rig.amps.length)) as Count) : undefined),
  learn: (option, rig) => {
    const listed = rig.amps ?? [];
    const count = option === '3' ? Math.max(3, listed.length) : COUNTS[option];
    return { ...rig, amps: Array.from({ length: count }, (_, i) => listed[i] ?? {}) };
  },
});
