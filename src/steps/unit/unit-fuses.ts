import { type ChoiceStep, choice } from '../step.ts';

export const unitFuses: ChoiceStep<'whole' | 'burnt'> = choice({
  place: 'unit',
  id: 'unit-fuses',
  short: 'Fuses of the head unit',
  ask: 'Key off: are the fuses of the head unit whole, in the bike’s fuse box and on its own back?',
  phone:
    'Key off. Find the radio’s fuses by the plan in the fuse box lid, pull one after the other, hold it to the light, and put it back before the next. Is a strip burnt through, or are all whole? Behind the panel there is often one more, in the radio’s own back. Dead turn signals as well? Then nobody rides it.',
  how: [
    'Pull one at a time and put it back before the next.',
    'The same fuse often feeds lamps or turn signals as well: a bike whose turn signals are dead is not ridden.',
    'Look behind the panel: many head units have one more in their own back.',
  ],
  why: 'A head unit has a feed that is always live and one with the key, each with a fuse, and often one of its own.',
  tool: 'none',
  minutes: 6,
  conditions: ['key-off', 'panel-off'],
  observes: ['unit'],
  cautions: ['fuse'],
  options: { whole: 'All whole', burnt: 'One is burnt through' },
  outcomes: { whole: 'all whole', burnt: 'one burnt through' },
  ifCannot: 'The panel stays on: look at those in the fuse box, and say so.',
});
