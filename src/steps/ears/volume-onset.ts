import { type ChoiceStep, choice } from '../step.ts';

export const volumeOnset: ChoiceStep<'near-top' | 'upper' | 'middle'> = choice({
  place: 'ears',
  id: 'volume-onset',
  short: 'Where on the volume scale',
  ask: 'Come up one step at a time: from where on the volume scale is it ugly?',
  phone:
    'Come up one step at a time and tell me the first ugly one. What number, out of how many? Is that one of the last three, in the last quarter, or lower down?',
  how: [
    'A track that you know, phone volume full. One step at a time, from low.',
    'Note the number of the first ugly step, and the last number of the scale.',
  ],
  why: 'A head unit at its limit is ugly only near the top. A wrong gain, range or profile makes it ugly long before.',
  tool: 'ears',
  minutes: 2,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  options: {
    'near-top': 'Only in the last two or three steps',
    upper: 'From about three quarters',
    middle: 'From about the middle, or below',
  },
  outcomes: { 'near-top': 'the last steps', upper: 'from three quarters', middle: 'from the middle or below' },
  ifCannot: 'Neighbours? Go on without.',
});
