import type { Corner } from '../../rig/corner.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';

/** One speaker, or both of one side; or what another flow looks into; or nothing, just now. */
export type WhichCorner = Corner | 'left' | 'right' | 'rear' | 'front' | 'all' | 'thin' | 'plays';

export const whichCorner: ChoiceStep<WhichCorner> = choice<WhichCorner>({
  place: 'told',
  id: 'which-corner',
  short: 'Which speaker is silent',
  ask: 'Which speaker is silent or much weaker than its partner, now or at times?',
  phone:
    'Sitting on the bike: which speaker is dead or faint, now or at times? Front left, front right, back left, back right, or a whole side? Or both at the back, both at the front, all of them? Or do all of them play, and only the bass is thin? Or can’t you tell, because they all play right now?',
  how: [
    'Left and right as you sit on the bike.',
    'Music on, not loud, and an ear at each grille. Or play the spoken left and right tones from the tones page, with the fader at each end.',
    'A whole side means front and rear on that side.',
    'It comes and goes? Name the one that goes.',
  ],
  why: 'One speaker: a plug, a wire, a coil or a channel. A whole side: check the balance first.',
  tool: 'none',
  minutes: 0.5,
  observes: EVERY_PART,
  options: {
    'front-left': 'Front left',
    'front-right': 'Front right',
    'rear-left': 'Rear left',
    'rear-right': 'Rear right',
    left: 'The whole left side',
    right: 'The whole right side',
    rear: 'Both rear speakers',
    front: 'Both front speakers',
    all: 'All of them',
    thin: 'None: all of them play, and the bass is thin',
    plays: 'Can’t tell: right now they all play',
  },
  leftOut: ({ rig }) => (rig.rearFitted === 'no' ? ['rear-left', 'rear-right', 'left', 'right', 'rear'] : []),
  justNow: ['plays'],
  outcomes: {
    'front-left': 'front left',
    'front-right': 'front right',
    'rear-left': 'rear left',
    'rear-right': 'rear right',
    left: 'the left side',
    right: 'the right side',
    rear: 'both rear ones',
    front: 'both front ones',
    all: 'all of them',
    thin: 'all play, the bass is thin',
    plays: 'none just now',
  },
  article: 'one-speaker-or-one-side',
});
