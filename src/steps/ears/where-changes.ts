import { type ChoiceStep, choice } from '../step.ts';

export const whereChanges: ChoiceStep<'stand' | 'road' | 'silent'> = choice({
  place: 'ears',
  id: 'where-changes',
  short: 'Parked or on the road',
  ask: 'Do you hear it parked, with the engine just idling, or only on the road?',
  phone:
    'When do you hear it: parked, as soon as the engine idles, or only once you ride? Or is it not the tone: do speakers fall silent?',
  how: ['From memory will do. Nobody listens for it while riding.'],
  why: 'Anything the head unit changes with the engine, it changes while parked. If it is only on the road, it is wind, or a volume that follows the speed. Speakers that fall silent are another complaint.',
  tool: 'none',
  minutes: 0.5,
  observes: ['settings', 'profile'],
  options: {
    stand: 'Parked, engine idling',
    road: 'Only on the road',
    silent: 'It is not the tone: speakers fall silent',
  },
  outcomes: { stand: 'parked, idling', road: 'only on the road', silent: 'speakers fall silent' },
});
