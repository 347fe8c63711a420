import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const unitFuses: ChoiceStep<'whole' | 'burnt' | 'back'> = choice({
  place: 'unit',
  id: 'unit-fuses',
  short: 'Head unit fuses',
  ask: 'Key off: are the head unit’s fuses whole, in the bike’s fuse box and on the back of the unit? Does it start with them back in?',
  phone:
    'Key off. Find the radio’s fuses on the chart in the fuse box lid. Pull one, hold it up to the light, and put it back before the next. Is a strip burnt through, or are they all whole? Key on again: does it start now? Behind the panel there is often one more, in the back of the radio. If the indicators are dead as well, nobody rides it.',
  how: [
    'Pull one at a time and put it back before the next.',
    'The same fuse often feeds lights or indicators as well: if the indicators are dead, don’t ride it.',
    'Look behind the panel: many head units have one more in the back.',
    'All back in? Key on once: a green blade makes contact again when it is pulled and pushed.',
  ],
  why: 'A head unit has one feed that is always live and one that comes with the key, each with a fuse, and often a fuse of its own.',
  tool: 'none',
  minutes: 6,
  conditions: ['key-off', 'panel-off'],
  completes: (f) => is(f, 'unit-screen', 'dark') && is(f, 'unit-feeds', 'ok'),
  observes: ['unit'],
  cautions: ['fuse'],
  putRight: ['back'],
  options: {
    whole: 'All whole',
    burnt: 'One is burnt through',
    back: 'All whole, and it starts again since they were pulled and put back',
  },
  outcomes: { whole: 'all whole', burnt: 'one burnt through', back: 'starts again with the same fuses' },
  ifCannot: 'The panel stays on: look at those in the fuse box, and say so.',
});
