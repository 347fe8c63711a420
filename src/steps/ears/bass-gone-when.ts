import { type ChoiceStep, choice } from '../step.ts';

export const bassGoneWhen: ChoiceStep<'at-start' | 'riding' | 'with-speed'> = choice({
  place: 'ears',
  id: 'bass-gone-when',
  short: 'When the bass goes',
  ask: 'Standing still, same song, same volume: does the bass go as soon as the engine starts?',
  phone: 'Outdoors, standing still, same song: start the engine. Is the bass gone at once, or only once you ride?',
  how: [
    'Outdoors. Play one song, engine off. Start the engine and keep listening, hands off the volume.',
    'Does the loudness follow your speed? That is a head unit setting.',
  ],
  why: 'A profile can change its EQ when the engine starts. Wind and engine noise mask bass only while you ride, whatever is stored.',
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
