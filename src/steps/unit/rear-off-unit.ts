import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const rearOffUnit: ChoiceStep<'plays' | 'no-change'> = choice({
  place: 'unit',
  id: 'rear-off-unit',
  short: 'Front with the rear unplugged',
  ask: 'With the rear speakers unplugged from the head unit, key off and on: does the front play now?',
  phone:
    'With the plug of the back speakers out: key off, count to ten, key on. Does the front play now, or no change?',
  how: ['Leave the rear unplugged, its ends off metal.', 'Key off, ten seconds, key on: a tripped output tries again.'],
  why: 'A rear wire on the frame can make the head unit shut down every output. With it unplugged the front comes back.',
  tool: 'ears',
  minutes: 4,
  conditions: ['rear-off-unit', 'head-unit-playing'],
  sensible: (f) =>
    f.rig.rearFitted !== 'no' && is(f, 'amps-drive', 'none', 'front') && !is(f, 'unit-screen', 'dark', 'restarts'),
  observes: ['unit', 'run', 'speaker'],
  options: { plays: 'Yes, the front plays', 'no-change': 'No change' },
  outcomes: { plays: 'front plays without the rear', 'no-change': 'still silent without the rear' },
});
