import { type ChoiceStep, choice } from '../step.ts';
import { isOneSpeaker } from './cone-press.ts';

export const sidesSwapped: ChoiceStep<'stays' | 'moves'> = choice({
  place: 'ears',
  id: 'sides-swapped',
  short: 'Left and right changed over',
  ask: 'Left and right plug of that pair changed over: does the ugly sound stay at its speaker or move to the other?',
  phone:
    'Key off, change over the left and right speaker plugs of that pair where they leave the amplifier or the radio. Key on, not loud at first. Same speaker ugly, or the other one now?',
  how: [
    'Key off. Mark both speaker plugs of that pair, then change them over at the amplifier, or at the head unit.',
    'Key on, volume up from zero to the ugly step. Which of the two is ugly now?',
    'Key off, and back as they were.',
  ],
  why: 'What stays is the speaker or its mount. What moves is the channel that drives it.',
  tool: 'ears',
  minutes: 8,
  conditions: ['ugly-step'],
  sensible: isOneSpeaker,
  observes: ['amp', 'unit', 'speaker'],
  cautions: ['key-off', 'bridge', 'short-suspected'],
  options: { stays: 'It stays at the same speaker', moves: 'It has moved to the other side' },
  outcomes: { stays: 'stays at the speaker', moves: 'moves with the channel' },
  ifCannot: 'Plugs out of reach: the hand at the cone tells most of it.',
});
