import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';
import { hasNoLamp } from './seen-on.ts';

export const ampSigns: ChoiceStep<'alive' | 'cycles' | 'dead'> = choice({
  place: 'amplifier',
  id: 'amp-signs',
  short: 'Other signs of life',
  ask: 'No lamp to see: is there a click or thump at switch-on, or is its case warm after ten minutes?',
  phone:
    'Key on, an ear near the amplifier, never at a speaker: one click, clicking again and again, or nothing? Then music low for ten minutes: is its case warm to the back of your hand?',
  how: [
    'Ear near the amplifier, key off and on: a click or a soft thump?',
    'Music for ten minutes, then the back of a hand near its case: warmer than the metal around it?',
  ],
  why: 'A relay that clicks and a case that warms up need supply, ground and turn-on, all three.',
  tool: 'ears',
  minutes: 11,
  conditions: ['volume-zero'],
  sensible: (f) => ampMayBeThere(f) && !fuseStaysOut(f) && hasNoLamp(f),
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run'],
  cautions: ['hot'],
  options: {
    alive: 'Yes, it clicks or gets warm',
    cycles: 'It clicks on and off, again and again',
    dead: 'No, nothing at all',
  },
  outcomes: { alive: 'clicks or gets warm', cycles: 'clicks on and off', dead: 'no sign of life' },
});
