import { firstOf } from '../both.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const panelPress: ChoiceStep<'panel' | 'speaker' | 'no-effect'> = choice({
  place: 'ears',
  id: 'panel-press',
  short: 'Panels and grilles by hand',
  ask: 'While it distorts: does a flat hand on the fairing, the screen, a lid or a grille make it clean?',
  phone:
    'At the volume where it distorts, earplugs in, a few seconds at a time. Press a flat hand on the fairing, then the screen, each lid, each grille. Does it stop with your hand on a panel, the screen or a lid? On a grille? Or on none?',
  how: [
    'Earplugs in. A track with bass, or the 80 Hz tone from zero up.',
    'A flat hand on one thing after the other: fairing panels, screen, dash, each lid and its lining, what lies in the cases.',
    'Then on each grille and the frame round it.',
  ],
  why: 'Bass shakes whatever is loose, and a panel that buzzes sounds like a bad speaker. A hand stops it at once.',
  tool: 'ears',
  compares: true,
  minutes: 2,
  conditions: ['ugly-step'],
  observes: ['speaker'],
  both: firstOf('speaker', 'no-effect', 'panel'),
  options: {
    panel: 'Yes, with a hand on a panel, the screen, a lid or luggage',
    speaker: 'Yes, with a hand on a grille or the frame of a speaker',
    'no-effect': 'No, wherever I press',
  },
  outcomes: {
    panel: 'clean with a hand on a panel',
    speaker: 'clean with a hand on a grille',
    'no-effect': 'no change',
  },
  ifCannot: 'Too loud where you are? A low hum at a low step will do.',
});
