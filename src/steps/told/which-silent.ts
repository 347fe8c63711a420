import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

export const whichSilent: ChoiceStep<'both' | 'left' | 'right' | 'weak' | 'front-too' | 'plays'> = choice({
  place: 'told',
  id: 'which-silent',
  short: 'Which of them are silent',
  ask: 'Which rear speakers are silent: both, or only one side?',
  phone:
    'Which of the back ones are dead: both, only the left, only the right? Do they play, but weakly? Or is the front dead too, or is it all playing right now?',
  how: [
    'Left and right as you sit on the bike.',
    'One side much weaker than the other counts as that side.',
    'Not sure? Music on, not loud, and an ear at each rear grille.',
  ],
  why: 'Settings, profiles and feeds silence both sides at once. One side only: a plug, a wire, a channel or a coil.',
  tool: 'none',
  minutes: 0.5,
  observes: EVERY_PART,
  options: {
    both: 'Both rear speakers, or the only one fitted',
    left: 'Only the left one, or it is much weaker',
    right: 'Only the right one, or it is much weaker',
    weak: 'Both play, but weakly',
    'front-too': 'The front is silent too',
    plays: 'None: right now they play as always',
  },
  outcomes: {
    both: 'both rear sides',
    left: 'only the left',
    right: 'only the right',
    weak: 'both play weakly',
    'front-too': 'the front too',
    plays: 'none just now',
  },
});
