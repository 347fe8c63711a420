import { type ChoiceStep, choice } from '../step.ts';

export const wishMirroring: ChoiceStep<'yes' | 'no'> = choice({
  place: 'plan',
  id: 'wish-mirroring',
  short: 'Mirroring',
  ask: 'Do you also want phone mirroring to start without a headset?',
  phone: 'Does your phone’s picture come up on the screen only when a headset is connected, and should that change?',
  how: ['If mirroring works for you as it is, or you do not use it: no.'],
  why: 'That is a headset module setting. It is separate, and no output profile touches it.',
  tool: 'none',
  minutes: 0.2,
  observes: [],
  options: { yes: 'Yes', no: 'No' },
  outcomes: { yes: 'wanted', no: 'not wanted' },
});
