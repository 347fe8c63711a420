import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { staysOn } from './seen-on.ts';

export const waterLook: ChoiceStep<'dry' | 'wet'> = choice({
  place: 'amplifier',
  id: 'water-look',
  short: 'Water in the amplifier',
  ask: 'Is the amplifier dry in its plugs and behind its vents, or damp or green?',
  phone:
    'Shine a light into the amplifier’s plugs and vents: dry, or damp, white or green anywhere? Or can’t you see in?',
  how: [
    'With a torch and a mirror: its plugs, its terminals, the gap round its cover, the lowest corner.',
    'Drops, a tide mark, white crust or green metal all count as wet.',
    'Leave its cover on. If it is wet, leave the battery negative off until it is dry.',
  ],
  why: 'Water leaks current between its terminals, keeps its fault light on and eats its circuit board. It takes a minute to see.',
  tool: 'none',
  minutes: 4,
  conditions: ['minus-off', 'amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && !staysOn(f),
  observes: ['amp'],
  options: { dry: 'Dry everywhere I can see', wet: 'Damp, crusted or green' },
  outcomes: { dry: 'dry', wet: 'damp or green' },
  ifCannot: 'Sealed, or too dark to see in: skip it.',
});
