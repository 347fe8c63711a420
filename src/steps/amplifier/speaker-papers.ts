import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const speakerPapers: ChoiceStep<'within' | 'over'> = choice({
  place: 'amplifier',
  id: 'speaker-papers',
  short: 'Watts on paper',
  ask: 'On paper: does the amplifier give a channel more watts than the speaker on it takes for good?',
  phone:
    'Read me two numbers: the watts of a channel at your ohms, sine or RMS, and the watts that the speaker takes continuously. Is the amplifier’s number the larger one?',
  how: [
    'Sine or RMS watts of a channel, at the ohms of the speakers on it.',
    'Continuous, rated or RMS watts of the speaker. Peak and “max” numbers do not count.',
  ],
  why: 'A speaker that gets twice what it takes is at the end of its way on bass, and cooks its coil.',
  tool: 'papers',
  minutes: 4,
  sensible: ampMayBeThere,
  observes: ['amp', 'speaker'],
  options: { within: 'No, the speaker takes as much or more', over: 'Yes, the amplifier gives clearly more' },
  outcomes: { within: 'within', over: 'amplifier gives more' },
  ifCannot: 'No papers, labels unreadable: go on without.',
});
