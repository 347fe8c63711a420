import { rearAmpMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const rearHiss: ChoiceStep<'hiss' | 'silent'> = choice({
  place: 'ears',
  id: 'rear-hiss',
  short: 'Hiss at a rear cone',
  ask: 'Music paused, ear at a rear speaker: is there a faint hiss, or a thump when it switches on?',
  phone:
    'Pause the music, put your ear right on the rear grille. A little hiss, like a shell? Or a soft thump when you switch on?',
  how: [
    'Quiet place, engine off, key on, music paused.',
    'Volume at zero, ear near the grille. For the thump: volume still at zero, key off and on, a hand’s width away.',
  ],
  why: 'Hiss is the amplifier’s own noise. If you hear it, the amplifier, the wire and the coil are alive, and the fault is before the amplifier.',
  tool: 'ears',
  minutes: 1,
  conditions: ['music-paused'],
  sensible: (f) => rearAmpMayBeThere(f) && !is(f, 'amp-light', 'off', 'fault'),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-tone'],
  options: { hiss: 'Yes, hiss or a thump', silent: 'Dead silence' },
  outcomes: { hiss: 'hiss or thump', silent: 'dead silence' },
  ifCannot: 'Too loud around you: we go on without it.',
});
