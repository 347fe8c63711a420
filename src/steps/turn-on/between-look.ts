import { mayBeOff } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { switchedBy } from '../fitted/switched-by.ts';
import { theAmp } from '../fitted/the-amp.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const betweenLook: ChoiceStep<'box' | 'direct'> = choice({
  place: 'turn-on',
  id: 'between-look',
  short: 'Between head unit and amplifier',
  ask: 'Is there a box, a converter or a line-level lead between the head unit and the amplifier?',
  phone:
    'Follow the thin signal wires back from the amplifier. Do they come straight from speaker wires, or from a little box or a line-level lead?',
  how: [
    'Follow the signal wires from the amplifier toward the head unit.',
    'A converter is a small box with plugs on both sides. A line-level lead has round shielded plugs.',
  ],
  why: 'A converter or a line output passes sound but blocks DC, and this amplifier is waiting for the DC.',
  tool: 'none',
  minutes: 3,
  conditions: ['amp-uncovered'],
  sensible: (f) => ampMayBeThere(f) && mayBeOff(f) && (switchedBy(f) ?? 'dc') === 'dc' && theAmp(f).input !== 'line',
  observes: ['unit-leads'],
  options: { box: 'Yes, something is in between', direct: 'No, straight speaker wires' },
  outcomes: { box: 'a converter or line lead', direct: 'straight speaker wires' },
});
