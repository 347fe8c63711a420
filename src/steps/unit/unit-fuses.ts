import { type ChoiceStep, choice } from '../step.ts';

export const unitFuses: ChoiceStep<'whole' | 'burnt'> = choice({
  place: 'unit',
  id: 'unit-fuses',
  short: 'Head unit fuses',
  ask: 'Key off: are the head unit’s fuses whole, in the bike’s fuse box and on the back of the unit?',
  phone:
    'Key off. Find the radio’s fuses on the chart in the fuse box lid. Pull one, hold it up to the light, and put it back before the next. Is a strip burnt through, or are they all whole? Behind the panel there is often one more, in the back of the radio. If the indicators are dead as well, nobody rides it.',
  how: [
    'Pull one at a time and put it back before the next.',
    'The same fuse often feeds lights or indicators as well: if the indicators are dead, don’t ride it.',
    'Look behind the panel: many head units have one more in the back.',
  ],
  why: 'A head unit has one feed that is always live and one that comes with the key, each with a fuse, and often a fuse of its own.',
  tool: 'none',
  minutes: 6,
  conditions: ['key-off', 'panel-off'],
  observes: ['unit'],
  cautions: ['fuse'],
  options: { whole: 'All whole', burnt: 'One is burnt through' },
  outcomes: { whole: 'all whole', burnt: 'one burnt through' },
  ifCannot: 'The panel stays on: look at those in the fuse box, and say so.',
});
