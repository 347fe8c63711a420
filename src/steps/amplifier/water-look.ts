import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { staysOn } from './seen-on.ts';

export const waterLook: ChoiceStep<'dry' | 'wet'> = choice({
  place: 'amplifier',
  id: 'water-look',
  short: 'Water in the amplifier',
  ask: 'Is the amplifier dry, in its plugs and behind its vents, or damp or green?',
  phone:
    'Look into the plugs and the vents of the amplifier with a light: dry, or damp, white or green anywhere? Or can you not see in?',
  how: [
    'A lamp and a mirror: its plugs, its terminals, the gap round its cover, the lowest corner.',
    'Drops, a tide mark, white crust or green metal all count as wet.',
    'Leave its cover on. Wet? Leave the battery minus off until it is dry.',
  ],
  why: 'Water leaks current between its terminals, holds its fault lamp on and eats its board. It is seen in a minute.',
  tool: 'none',
  minutes: 4,
  conditions: ['minus-off', 'amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && !staysOn(f),
  observes: ['amp'],
  options: { dry: 'Dry everywhere I can see', wet: 'Damp, crusted or green' },
  outcomes: { dry: 'dry', wet: 'damp or green' },
  ifCannot: 'Sealed, or no light gets in: go on without.',
});
