import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { silentOnes } from '../told/silent-side.ts';

export const unitReplug: ChoiceStep<'cured' | 'no-change'> = choice({
  place: 'unit',
  id: 'unit-replug',
  short: 'Head unit’s plug out and in again',
  ask: (s) =>
    `Pull the head unit’s plug, look at its pins, push it home until it locks: does ${silentOnes(s, 'the rear')} play now?`,
  phone: (s) =>
    `Key off, panel off. Pull the radio’s plug, look for green or pushed-back pins, push it in till it clicks. Key on, music on, not loud: does ${silentOnes(s, 'the back')} play now, or no change?`,
  how: [
    'Pull the head unit’s plug straight out. Look for green, bent or pushed-back pins.',
    'Plug and unplug it three times, then push it home until it locks.',
    'Key on, music on, not loud. Listen at the grille.',
  ],
  why: 'A pin with a film on it looks fine and passes nothing. Replugging wipes it, for a while at least.',
  tool: 'ears',
  minutes: 7,
  conditions: ['key-off', 'panel-off'],
  // A finger finds the plug, and not what is wrong in it: a film, a pin, or a wire.
  completes: (f) => is(f, 'wiggle', 'unit-plug'),
  observes: ['unit-leads'],
  cautions: ['key-off'],
  options: { cured: 'Yes, it plays', 'no-change': 'No change' },
  outcomes: { cured: 'plays after replugging', 'no-change': 'no change' },
  ifCannot: 'The panel stays on: skip it.',
});
