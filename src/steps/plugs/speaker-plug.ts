import { type ChoiceStep, choice } from '../step.ts';
import { concernsAxle, silentOnes } from '../told/silent-side.ts';

/** The plug of a front speaker: nobody opens it but whoever had the fairing off. */
export const speakerPlug: ChoiceStep<'cured' | 'dirty' | 'clean' | 'none'> = choice({
  place: 'plugs',
  id: 'speaker-plug',
  short: 'The front speaker’s own plug',
  ask: (s) =>
    `Is the plug of ${silentOnes(s, 'the silent front speaker')} home and clean? Push it home: does it play now?`,
  phone: (s) =>
    `Key off, grille or fairing part off. Is the plug on ${silentOnes(s, 'the silent speaker')} off, green or wet, or clean? Could it sit on another plug’s partner? Put it on its own, push it home, key on, music low: does it play now?`,
  how: [
    'Key off. Take off the grille, or the fairing part in front of the speaker.',
    'Pull the plug off the speaker, or the connector just before it. Look at both halves, push it home until it locks.',
    'Another plug like it beside it? After work on the fairing one may sit on the wrong partner, home and clean: follow its wires.',
    'Key on, music low, listen.',
  ],
  why: 'Behind a fairing the speaker’s plug is pushed on blind, and is often left off after the fairing has been off.',
  tool: 'ears',
  minutes: 6,
  conditions: ['key-off'],
  sensible: (f) => concernsAxle(f, 'front'),
  observes: ['run'],
  cautions: ['key-off'],
  options: {
    cured: 'It plays now',
    dirty: 'No, and its contacts are green, wet or loose',
    clean: 'No, and it was home and clean',
    none: 'There is no plug: the wires are soldered',
  },
  outcomes: { cured: 'plays after pushing home', dirty: 'dirty or loose', clean: 'home and clean', none: 'no plug' },
  ifCannot: 'The fairing stays on: skip it.',
});
