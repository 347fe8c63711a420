import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const whatElse: ChoiceStep<'nothing' | 'accessories' | 'unit' | 'bike'> = choice({
  place: 'told',
  id: 'what-else',
  short: 'What else stopped',
  ask: 'Did anything else on the bike stop at the same time?',
  phone:
    'Did anything else fail with it: the radio dark or restarting, the socket, the charger? Has the clock reset, are the lights dim? Or nothing else?',
  how: ['Look at the head unit’s screen, a socket or a charger, the clock, and the lights.'],
  why: 'A dead socket points to the fuse that the remote wire shares. A clock that has reset points to the battery posts.',
  tool: 'none',
  minutes: 1,
  sensible: (f) => !is(f, 'amp-history', 'never'),
  observes: ['unit', 'amp-supply'],
  options: {
    nothing: 'Nothing else',
    accessories: 'A socket, a charger or another accessory',
    unit: 'The head unit is dark or restarts too',
    bike: 'Dim lights, a slow starter, a clock that has reset',
  },
  outcomes: {
    nothing: 'nothing else',
    accessories: 'an accessory too',
    unit: 'the head unit too',
    bike: 'the whole bike is weak',
  },
});
