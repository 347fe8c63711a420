import { answeredWith } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART, type Situation } from '../step.ts';

/** Speed volume acts on the road alone: what is the same at the stand may still change there. */
const sameAtTheStand = (s: Situation): boolean => answeredWith(s.facts, 'engine-compare', 'same');

export const speedOff: ChoiceStep<'speed' | 'menu' | 'no-change' | 'none'> = choice({
  place: 'settings',
  id: 'speed-off',
  short: 'Speed volume and compensation off',
  ask: (s) =>
    sameAtTheStand(s)
      ? 'Speed volume, loudness and any compensation in its menu off, then ride as always: is the change gone?'
      : 'Speed volume, loudness and any engine or noise compensation in its menu off: is the change gone?',
  phone: (s) =>
    `In the sound menu write down what is set now. Then speed volume off, loudness off, and anything called compensation for noise or engine off. ${
      sameAtTheStand(s)
        ? 'Then ride as you always do, and call me after it'
        : 'After each one, outdoors, engine off and on'
    }: is the change gone? Which one was it? Or is there no such menu?`,
  how: (s) => [
    'Write down what is set now.',
    'Speed-dependent volume to off, not just low. Loudness off. On a replaced unit look for noise, engine or vehicle compensation.',
    sameAtTheStand(s)
      ? 'At the stand nothing changes, so only the road tells. All off, ride, stop. Gone? Then one on again each ride.'
      : 'Outdoors, compare engine off and idling again after each of them.',
  ],
  why: 'A setting like this turns everything up with speed or with the engine. Battery work resets it to the factory choice.',
  tool: 'none',
  minutes: 2,
  conditions: ['head-unit-playing'],
  observes: EVERY_PART,
  cautions: ['riding'],
  options: {
    speed: 'Gone: it was speed volume or loudness',
    menu: 'Gone: it was a compensation in its menu',
    'no-change': 'No, nothing has changed',
    none: 'There is no such setting',
  },
  putRight: ['speed', 'menu'],
  outcomes: {
    speed: 'the same without speed volume',
    menu: 'the same without compensation',
    'no-change': 'as before',
    none: 'no such setting',
  },
});
