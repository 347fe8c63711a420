import { firstOf } from '../both.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const engineCompare: ChoiceStep<'same' | 'bass' | 'louder' | 'noise'> = choice({
  place: 'ears',
  id: 'engine-compare',
  short: 'Engine off against idling',
  ask: 'Outdoors, same track, volume untouched: what changes from engine off to idling?',
  phone:
    'Outside only. Half a minute of a song with the engine off, then the same half minute idling, volume untouched. The same? Bass or treble different? All of it louder or quieter? Or a whine?',
  how: [
    'Outdoors, on the stand, in neutral. Ear close to a speaker both times, so that the engine does not drown it.',
    'Engine off for half a minute, then idling, the same half minute. Nobody touches the volume.',
  ],
  why: 'A profile that was never changed has two tunings, one for engine off and one for engine running. Any other sounds the same in both.',
  tool: 'ears',
  compares: true,
  minutes: 3,
  conditions: ['head-unit-playing', 'engine-running'],
  observes: ['settings', 'profile', 'unit'],
  both: firstOf('bass', 'louder', 'noise', 'same'),
  options: {
    same: 'The same, apart from the engine itself',
    bass: 'The tone changes: more or less bass or treble',
    louder: 'All of it gets louder or quieter',
    noise: 'A whine or ticking comes with it',
  },
  outcomes: { same: 'the same', bass: 'the tone changes', louder: 'the level changes', noise: 'a noise comes' },
  ifCannot: 'Not indoors: exhaust gas kills. Skip it.',
});
