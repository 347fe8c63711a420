import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const ampSigns: ChoiceStep<'alive' | 'dead'> = choice({
  place: 'amplifier',
  id: 'amp-signs',
  short: 'Other signs of life',
  ask: 'No lamp to see: is there a click or thump at switch-on, or is its case warm after ten minutes?',
  phone: 'Listen at the amplifier while you switch on: a click? After ten minutes of music, is its case warm?',
  how: [
    'Volume at zero. Ear near the amplifier, key off and on: a click or a soft thump?',
    'Music for ten minutes, then the back of a hand near its case: warmer than the metal around it?',
  ],
  why: 'A relay that clicks and a case that warms up need supply, ground and turn-on, all three.',
  tool: 'ears',
  minutes: 11,
  conditions: ['volume-zero'],
  sensible: (f) => ampMayBeThere(f) && is(f, 'amp-light', 'cannot'),
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp', 'run'],
  cautions: ['hot', 'wakes-loud'],
  options: { alive: 'Yes, it clicks or gets warm', dead: 'No, nothing at all' },
  outcomes: { alive: 'clicks or gets warm', dead: 'no sign of life' },
});
