import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampLight: ChoiceStep<'normal' | 'off' | 'fault'> = choice({
  place: 'amplifier',
  id: 'amp-light',
  short: 'Amplifier lamp',
  ask: 'With music playing, is the amplifier’s lamp lit as usual, off, or showing its fault colour?',
  phone:
    'Do not take anything apart yet. Just look at the little lamp on the amplifier: what colour, and does it blink?',
  how: [
    'Music playing at medium volume.',
    'Look within 10 seconds, and again after a minute: an amplifier that listens falls asleep.',
  ],
  why: 'A lit lamp does not prove that sound comes out, and a dark one does not prove that the supply is missing. It says where to look first.',
  tool: 'none',
  minutes: 1,
  conditions: ['head-unit-playing'],
  sensible: ampMayBeThere,
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run'],
  cautions: ['hot'],
  options: { normal: 'Lit as usual', off: 'Off', fault: 'Fault colour, or blinking' },
  outcomes: { normal: 'lit', off: 'off', fault: 'fault' },
  ifCannot: 'Hidden amplifier: lay a hand on it after ten minutes of music. Warm means on.',
});
