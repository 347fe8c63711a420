import { type Findings, is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { ampMayBeFitted } from './amp-there.ts';

/** Whether an amplifier on line level is known, or one of which nobody said what feeds it. */
const lineMayBeFed = ({ rig }: Findings): boolean =>
  rig.amps === undefined || rig.amps.some(({ input }) => input !== 'speaker');

export const lineConverter: ChoiceStep<'box' | 'line' | 'direct'> = choice({
  place: 'fitted',
  id: 'line-converter',
  short: 'Converter on the way',
  ask: 'Is there a line-level converter, a small box, between the head unit and the amplifier?',
  phone:
    'Follow the amplifier’s thin signal leads back towards the radio. Is there a little box on the way, with speaker wires in and round plugs out? Round plugs and no box? Or speaker wires all the way?',
  how: [
    'Follow the signal leads from the amplifier towards the head unit.',
    'A converter is a small box: speaker wires in, round shielded plugs out. Often it has a ground wire of its own.',
  ],
  why: 'A converter with a ground of its own closes a loop between head unit and amplifier. It is the first place to look for a whine.',
  tool: 'none',
  minutes: 1,
  sensible: (f) =>
    ampMayBeFitted(f) && lineMayBeFed(f) && is(f, 'engine-compare', 'noise') && !is(f, 'noise-where', 'phone', 'stays'),
  // What is done about a noise that comes in by the signal leads hangs on it.
  completes: (f) => is(f, 'noise-where', 'plug', 'cannot'),
  observes: ['unit-leads'],
  options: {
    box: 'Yes, there is a box',
    line: 'No box, but round shielded plugs',
    direct: 'No, speaker wires all the way',
  },
  outcomes: { box: 'a converter', line: 'a line-level lead, no box', direct: 'speaker wires' },
  givenUnder: ['noise-where'],
});
