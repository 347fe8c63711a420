import { type ChoiceStep, choice } from '../step.ts';
import { rearPairFound, rearPairSilent } from './rear-pair-found.ts';

/** How the rear pairs were read: a break before the place, or a short after it, looks like a head unit that sends nothing. */
export const rearPairPlace: ChoiceStep<'unit' | 'on-the-way' | 'loaded'> = choice({
  place: 'unit',
  id: 'rear-pair-place',
  short: 'Where you measured',
  ask: 'Where did you measure, and was the rear unplugged?',
  phone:
    'Where were the probes: right behind the radio, or at some plug on the way back? And were the rear speakers unplugged, or still plugged in?',
  how: [
    'The head unit’s own plug is the one that goes into its back.',
    'With a rear amplifier, the rear counts as unplugged: its speakers are not on the head unit.',
  ],
  why: 'A plug left off behind the fairing, or a short on the speaker run, reads exactly like a head unit that sends nothing.',
  tool: 'none',
  minutes: 0.2,
  sensible: (f) => rearPairSilent(f) || rearPairFound(f) === 'one-only',
  observes: [],
  options: {
    unit: 'At the head unit’s own plug, rear unplugged',
    'on-the-way': 'At a plug or wire on the way, rear unplugged',
    loaded: 'The rear speakers were still plugged in',
  },
  outcomes: { unit: 'at the head unit', 'on-the-way': 'on the way', loaded: 'with the rear plugged in' },
  givenUnder: ['rear-pair'],
  ifCannot: 'We assume somewhere on the way, with the rear plugged in.',
});
