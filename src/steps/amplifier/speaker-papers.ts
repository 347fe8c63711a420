import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const speakerPapers: ChoiceStep<'within' | 'over'> = choice({
  place: 'amplifier',
  id: 'speaker-papers',
  short: 'Watts on paper',
  ask: 'On paper: does the amplifier give each channel more watts than its speaker is rated for?',
  phone:
    'Read me two numbers: the amplifier’s watts per channel at your ohms, sine or RMS, and the speaker’s continuous watts. Is the amplifier’s number the bigger one?',
  how: [
    'Amplifier: sine or RMS watts per channel, at the ohms of the speakers on it.',
    'Speaker: continuous, rated or RMS watts. Peak and “max” numbers do not count.',
  ],
  why: 'A speaker fed twice its rating runs out of travel on bass and cooks its coil.',
  tool: 'papers',
  minutes: 4,
  sensible: ampMayBeThere,
  observes: ['amp', 'speaker'],
  options: { within: 'No, the speaker is rated as high or higher', over: 'Yes, the amplifier gives a lot more' },
  outcomes: { within: 'within', over: 'amplifier gives more' },
  ifCannot: 'No papers, labels unreadable: skip it.',
});
