import { CORNERS, type Corner } from '../../rig/corner.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { type OfEach, ofEach, withSubject } from '../subject.ts';
import { atSpeaker, axleOfSpeaker, silentSpeaker, theSpeaker } from './silent-speaker.ts';

export const popSpeaker: OfEach<ChoiceStep<'moves' | 'dead'>, 'silent', Corner> = ofEach(
  ['silent', ...CORNERS],
  (subject) =>
    choice({
      place: 'runs',
      id: 'pop-speaker',
      short: atSpeaker('1.5 V cell on the speaker itself', subject),
      ask: (s) =>
        `Grille off, one wire off: touch the cell to the tabs of ${theSpeaker(subject, s)}. Does the cone move or click?`,
      phone: (s) =>
        `A 1.5 volt cell, never 9 volt, half a second on the two tabs of ${theSpeaker(subject, s)}, never on a tweeter. Does the cone move or click, or nothing?`,
      how: ['Touch the cell to the two tabs, half a second.', 'Watch the cone, and listen.'],
      why: 'If the cone moves here but not from the far end of the run, the wire between is broken.',
      tool: 'cell',
      minutes: 8,
      conditions: ['key-off', withSubject('grille-off', subject, 'silent')],
      sensible: (f) => is(f, withSubject('pop-run', axleOfSpeaker(subject, f), 'rear'), 'dead', 'faint'),
      observes: ['speaker'],
      options: { moves: 'Yes, it moves or clicks', dead: 'No, nothing' },
      outcomes: { moves: 'cone moves', dead: 'nothing' },
    }),
  silentSpeaker,
);
