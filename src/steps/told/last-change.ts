import { type ChoiceStep, choice } from '../step.ts';

export const lastChange: ChoiceStep<
  'nothing' | 'fitted' | 'workshop' | 'reflash' | 'unit' | 'opened' | 'front' | 'battery' | 'lead' | 'rain' | 'stood'
> = choice({
  place: 'told',
  id: 'last-change',
  short: 'Last change',
  ask: 'What was the last thing done to the bike before this?',
  phone:
    'What was the last thing anybody did to the bike: a service, a reflash, the radio or the battery, a new lead, parts fitted? Was the fairing or a case off? A wash, heavy rain, months parked up? Or nothing?',
  how: ['A service, a wash, a case taken off, a new battery: it all counts, even if it has nothing to do with sound.'],
  why: 'Most faults start with the last job done. It raises the odds of whatever fits, and rules nothing out.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: {
    nothing: 'Nothing I know of',
    fitted: 'Rear speakers or an amplifier were fitted',
    workshop: 'A service, or another workshop had it',
    reflash: 'A reflash of the head unit',
    unit: 'The head unit was replaced or swapped',
    opened: 'A case or lid was off, or it was washed',
    front: 'Front speakers, or the fairing was off',
    battery: 'Work on the battery',
    lead: 'A lead or a cable was replaced',
    rain: 'It was ridden in heavy rain',
    stood: 'It was parked up for months',
  },
  outcomes: {
    nothing: 'nothing known',
    fitted: 'speakers or amplifier fitted',
    workshop: 'workshop or service',
    reflash: 'a reflash',
    unit: 'head unit swapped',
    opened: 'case or lid off, or washed',
    front: 'front speakers, or fairing off',
    battery: 'battery work',
    lead: 'a lead replaced',
    rain: 'heavy rain',
    stood: 'parked up for months',
  },
});
