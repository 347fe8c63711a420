import { firstOf } from '../both.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const volumeOnset: ChoiceStep<'near-top' | 'upper' | 'middle'> = choice({
  place: 'ears',
  id: 'volume-onset',
  short: 'Where on the volume scale',
  ask: 'Come up one step at a time: how far up the volume scale does it start to distort?',
  phone:
    'Come up one step at a time and tell me the first one that distorts. What number, out of how many? Is that in the last three, in the last quarter, or lower down?',
  how: [
    'Play a track you know, phone volume full. Come up from low, one step at a time.',
    'Note the number of the first step that distorts, and the highest number on the scale.',
  ],
  why: 'A head unit at its limit distorts only near the top. A wrong gain, range or profile distorts long before that.',
  tool: 'ears',
  minutes: 2,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  both: firstOf('middle', 'upper', 'near-top'),
  options: {
    'near-top': 'Only in the last two or three steps',
    upper: 'From about three quarters up',
    middle: 'From about the middle, or lower',
  },
  outcomes: { 'near-top': 'the last steps', upper: 'from three quarters', middle: 'from the middle or below' },
  ifCannot: 'Neighbours? Skip it.',
});
