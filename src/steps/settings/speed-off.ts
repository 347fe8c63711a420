import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const speedOff: ChoiceStep<'speed' | 'menu' | 'no-change' | 'none'> = choice({
  place: 'settings',
  id: 'speed-off',
  short: 'Speed volume and compensation off',
  ask: 'Speed volume, loudness and any engine or noise compensation in its menu off: does it stay the same now?',
  phone:
    'In the sound menu: speed volume off, loudness off, and anything called compensation for noise or engine off. After each one, outdoors, engine off and on: the same now? Which one was it? Or is there no such menu?',
  how: [
    'Write down what is set now.',
    'Speed-dependent volume to off, not just low. Loudness off. On a replaced unit look for noise, engine or vehicle compensation.',
    'Outdoors, compare engine off and idling again after each of them.',
  ],
  why: 'A setting like this turns everything up with speed or with the engine. Battery work resets it to the factory choice.',
  tool: 'none',
  minutes: 2,
  conditions: ['head-unit-playing'],
  observes: EVERY_PART,
  cautions: ['riding'],
  options: {
    speed: 'The same now: it was speed volume or loudness',
    menu: 'The same now: it was a compensation in its menu',
    'no-change': 'It still changes',
    none: 'There is no such setting',
  },
  putRight: ['speed', 'menu'],
  outcomes: {
    speed: 'the same without speed volume',
    menu: 'the same without compensation',
    'no-change': 'still changes',
    none: 'no such setting',
  },
});
