import { type ChoiceStep, choice } from '../step.ts';

export const loudCompare: ChoiceStep<'clean' | 'ugly' | 'cleaner'> = choice({
  place: 'ears',
  id: 'loud-compare',
  short: 'Loud, engine off and idling',
  ask: 'As loud as you ever play it, a few seconds with the engine off, then idling outdoors: is it clean?',
  phone:
    'As loud as you ever play it, a few seconds, ears covered. Engine off: clean or ugly? Then outside, idling: clean or ugly?',
  how: [
    'A track with bass, a few seconds each, ears covered, nobody near a speaker.',
    'Engine off, then idling, outdoors, in neutral. Volume untouched.',
  ],
  why: 'Ugly with the engine off and clean with it on is a supply that gives way. Ugly both times, bass first: more level than belongs there.',
  tool: 'ears',
  minutes: 2,
  conditions: ['head-unit-playing', 'engine-running'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-listening'],
  options: {
    clean: 'Clean both times',
    ugly: 'Ugly with the engine running, too',
    cleaner: 'Ugly with the engine off, clean when it runs',
  },
  outcomes: { clean: 'clean both times', ugly: 'ugly when loud', cleaner: 'ugly only with the engine off' },
  ifCannot: 'Too loud for where you are: go on without.',
});
