import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const whatPlays: ChoiceStep<'all' | 'none' | 'no-rear' | 'rear-weak' | 'no-front' | 'some'> = choice({
  place: 'ears',
  id: 'what-plays',
  short: 'What plays now',
  ask: 'Music on, not loud, engine off: which speakers play?',
  phone:
    'Stay parked, and put your ear to each speaker. Do all of them play, or none? Is it the back that is silent, or faint? Or both at the front? Or just one speaker, or one side?',
  how: ['Key on, engine off, a track that plays from both sides.', 'One ear to each grille, fairing and rear.'],
  why: 'What still plays has its feed, its signal and its wires. That leaves one part of the bike to look at.',
  tool: 'ears',
  minutes: 1,
  conditions: ['head-unit-playing'],
  observes: EVERY_PART,
  options: {
    none: 'None: nothing plays anywhere',
    'no-rear': 'The front plays, the rear is silent',
    'rear-weak': 'All play, but the rear only weakly',
    'no-front': 'The rear plays, the front is silent or weak',
    some: 'One speaker or one side is silent or weak',
    all: 'All of them play',
  },
  leftOut: ({ rig }) => (rig.rearFitted === 'no' ? ['no-rear', 'rear-weak', 'no-front'] : []),
  outcomes: {
    none: 'nothing plays',
    'no-rear': 'the rear is silent',
    'rear-weak': 'the rear is weak',
    'no-front': 'the front is silent or weak',
    some: 'one speaker or side is silent or weak',
    all: 'all play',
  },
  article: 'talk-a-caller-through',
});
