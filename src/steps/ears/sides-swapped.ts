import { type ChoiceStep, choice } from '../step.ts';
import { isOneSpeaker } from './cone-press.ts';

export const sidesSwapped: ChoiceStep<'stays' | 'moves'> = choice({
  place: 'ears',
  id: 'sides-swapped',
  short: 'Left and right swapped',
  ask: 'Left and right plugs of that pair swapped: does the distortion stay at its speaker or move to the other?',
  phone:
    'Key off, swap the left and right speaker plugs of that pair where they leave the amplifier or the radio. Key on, not loud at first. Is the same speaker distorted, or the other one now?',
  how: [
    'Key off. Mark both speaker plugs of that pair, then swap them at the amplifier, or at the head unit.',
    'Key on, volume up from zero to the step where it distorts. Which of the two is it now?',
    'Key off, and put them back as they were.',
  ],
  why: 'If it stays, it is the speaker or its mount. If it moves, it is the channel that drives it.',
  tool: 'ears',
  compares: true,
  minutes: 8,
  conditions: ['ugly-step'],
  sensible: isOneSpeaker,
  observes: ['amp', 'unit', 'speaker'],
  cautions: ['key-off', 'bridge', 'short-suspected'],
  options: { stays: 'It stays at the same speaker', moves: 'It has moved to the other side' },
  outcomes: { stays: 'stays at the speaker', moves: 'moves with the channel' },
  ifCannot: 'Plugs out of reach: pressing the cone by hand tells you most of it.',
});
