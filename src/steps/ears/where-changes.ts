import { type ChoiceStep, choice } from '../step.ts';

export const whereChanges: ChoiceStep<'stand' | 'road'> = choice({
  place: 'ears',
  id: 'where-changes',
  short: 'At the stand or on the road',
  ask: 'Is it heard at the stand already, with the engine only idling, or only on the road?',
  phone: 'When do you hear it: at the stand as soon as the engine idles, or only once you ride?',
  how: ['From memory will do. Nobody listens for it while riding.'],
  why: 'What the head unit changes with the engine it changes at the stand. Only on the road it is wind, or a volume that follows the speed.',
  tool: 'none',
  minutes: 0.5,
  observes: ['settings', 'profile'],
  options: { stand: 'At the stand already', road: 'Only on the road' },
  outcomes: { stand: 'at the stand', road: 'only on the road' },
});
