import { type ChoiceStep, choice } from '../step.ts';

export const bassGoneWhen: ChoiceStep<'at-start' | 'riding' | 'with-speed'> = choice({
  place: 'ears',
  id: 'bass-gone-when',
  short: 'Bass goes when',
  ask: 'Standing still, same song, same volume: does the bass go the moment the engine starts?',
  phone: 'Outdoors, standing still, same song: start the engine. Is the bass gone at once, or only once you ride?',
  how: [
    'Outdoors. Play one song, engine off. Start the engine and keep listening, hands off the volume.',
    'Does the loudness follow your speed? That is a setting of the head unit.',
  ],
  why: 'A profile can change its EQ as the engine starts. Wind and engine noise cover bass only while you ride, whatever is stored.',
  tool: 'ears',
  minutes: 3,
  conditions: ['controls-flat', 'engine-running'],
  observes: [],
  options: {
    'at-start': 'Yes, at once, standing still',
    riding: 'No, only while riding',
    'with-speed': 'It gets louder and softer with speed',
  },
  outcomes: { 'at-start': 'as the engine starts', riding: 'only while riding', 'with-speed': 'follows the speed' },
  givenUnder: ['planned-change'],
});
