import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const unitPlugLook: ChoiceStep<'dry' | 'wet'> = choice({
  place: 'unit',
  id: 'unit-plug-look',
  short: 'Water in the head unit’s plug',
  ask: 'Pull the head unit’s plug and look into both halves: dry, or is there water or green in it?',
  phone:
    'Pull the radio’s plug and look into both halves, nothing pushed in: all dry, or is there water or anything green?',
  how: [
    'Pull it straight out. Look into both halves in good light.',
    'Nothing is pushed into it, and no pin is scraped.',
  ],
  why: 'Water between the pins and ground shuts the rear outputs down. At the plug that reads like a rear that is switched off.',
  tool: 'none',
  minutes: 3.5,
  conditions: ['key-off', 'panel-off', 'unit-plug-apart'],
  sensible: (f) => is(f, 'rear-pair', 'none', 'one-only') || is(f, 'tools-at-hand', 'none', 'cannot'),
  observes: ['unit-leads'],
  options: { dry: 'All dry and clean', wet: 'Water in it, or something green between pins' },
  outcomes: { dry: 'dry and clean', wet: 'water or green in it' },
  ifCannot: 'The plug stays in: skip it.',
});
