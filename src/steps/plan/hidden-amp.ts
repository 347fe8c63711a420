import { type ChoiceStep, choice } from '../step.ts';

export const hiddenAmp: ChoiceStep<'no' | 'yes'> = choice({
  place: 'plan',
  id: 'hidden-amp',
  short: 'Hidden amplifier',
  ask: 'Is there a fused lead at the battery, or a box with a light on it, that nobody has explained?',
  phone:
    'Have another look before anything is changed: any thick lead with its own fuse at the battery, or a box with a little light?',
  how: [
    'Music on. Look under the seat, in the saddlebags, in the lids, behind the fairing and in the trunk.',
    'A box that is warm after ten minutes of music is an amplifier too.',
  ],
  why: 'An amplified profile is stored, so somebody had a reason. Going back would send full bass into an amplifier nobody counted.',
  tool: 'none',
  minutes: 3,
  conditions: ['head-unit-playing'],
  observes: [],
  cautions: ['hot'],
  options: { no: 'No, nothing', yes: 'Yes' },
  outcomes: { no: 'nothing found', yes: 'found' },
  givenUnder: ['amp-count'],
});
