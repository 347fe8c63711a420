import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';
import { hasNoLamp } from './seen-on.ts';

export const ampSigns: ChoiceStep<'alive' | 'cycles' | 'dead'> = choice({
  place: 'amplifier',
  id: 'amp-signs',
  short: 'Other signs of life',
  ask: 'No light to see: is there a click or thump at switch-on, or is its case warm after ten minutes?',
  phone:
    'Turn the key on with an ear near the amplifier, never at a speaker: one click, click after click, or nothing? Then ten minutes of quiet music: is its case warm to the back of your hand?',
  how: [
    'Ear near the amplifier, turn the key off and on: a click or a soft thump?',
    'Ten minutes of music, then the back of your hand near its case: warmer than the metal around it?',
  ],
  why: 'A click or a warm case takes supply, ground and turn-on, all three.',
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
