import { silentMayBeOnAmp } from '../amplifier/silent-on-amp.ts';
import { rearAmpMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { lookedAtWhilePlaying } from '../told/comes-and-goes.ts';
import { silentOnes } from '../told/silent-side.ts';

export const rearHiss: ChoiceStep<'hiss' | 'silent'> = choice({
  place: 'ears',
  id: 'rear-hiss',
  short: 'Hiss at the silent cone',
  ask: (s) =>
    `Music paused, ear at ${silentOnes(s, 'a silent rear speaker')}: is there a faint hiss, or a thump when it switches on?`,
  phone: (s) =>
    `Volume at zero, your ear a hand’s width from ${silentOnes(s, 'the silent rear grille')}. A faint hiss, like a seashell? Now your head an arm’s length away, volume still at zero, key off and on: a soft thump? Or dead silence?`,
  how: [
    'A quiet place. Volume at zero, ear near the grille.',
    'For the thump: head back an arm’s length, volume still at zero, key off and on.',
  ],
  why: 'Hiss is the amplifier’s own noise. If you hear it, output stage, wire and coil all work: look ahead of the amplifier, and at its inputs.',
  tool: 'ears',
  minutes: 1,
  conditions: ['music-paused'],
  sensible: (f) =>
    (f.facts['which-corner'] ? silentMayBeOnAmp(f) : rearAmpMayBeThere(f)) &&
    !is(f, 'amp-light', 'off', 'fault', 'blinks') &&
    // What comes and goes, and plays just now, hisses just now: it says nothing of when it is silent.
    !lookedAtWhilePlaying(f),
  observes: ['amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['wakes-loud'],
  options: { hiss: 'Yes, hiss or a thump', silent: 'Dead silence' },
  justNow: ['hiss'],
  outcomes: { hiss: 'hiss or thump', silent: 'dead silence' },
  ifCannot: 'Too noisy where you are: skip it.',
});
