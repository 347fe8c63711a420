import { type ChoiceStep, choice } from '../step.ts';

export const loudCompare: ChoiceStep<'clean' | 'ugly' | 'cleaner'> = choice({
  place: 'ears',
  id: 'loud-compare',
  short: 'Loud, engine off and idling',
  ask: 'As loud as you ever play it, a few seconds with the engine off, then idling outdoors: is it clean?',
  phone:
    'As loud as you ever play it, a few seconds, ears covered. Engine off: clean or distorted? Then outside, idling: clean or distorted?',
  how: [
    'A track with bass, a few seconds each, ears covered, nobody near a speaker.',
    'Engine off, then idling, outdoors, in neutral. Volume untouched.',
  ],
  why: 'Distorted with the engine off but clean with it running: the supply sags. Distorted idling: too much level, or too little made at idle.',
  tool: 'ears',
  minutes: 2,
  conditions: ['head-unit-playing', 'engine-running'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-listening'],
  options: {
    clean: 'Clean both times',
    ugly: 'Distorted with the engine idling',
    cleaner: 'Distorted with the engine off, clean with it running',
  },
  outcomes: { clean: 'clean both times', ugly: 'distorts when loud', cleaner: 'distorts only with the engine off' },
  ifCannot: 'Too loud for where you are: skip it.',
});
