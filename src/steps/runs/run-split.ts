import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { type OfEach, ofEach, withSubject } from '../subject.ts';
import { atSpeaker, silentSpeaker, speakerPlace } from './silent-speaker.ts';

const coilOf = (place: string | undefined): string =>
  place === undefined ? 'each silent coil’s' : `the ${place} coil’s`;

/** Where along an open run the open place is, at the docking plug. */
export const runSplit: OfEach<
  ChoiceStep<'bike-side' | 'contacts' | 'lid-side' | 'no-plug'>,
  'silent',
  'rear-left' | 'rear-right'
> = ofEach(
  ['silent', 'rear-left', 'rear-right'],
  (subject) =>
    choice({
      place: 'runs',
      id: 'run-split',
      short: atSpeaker('Where the run is open', subject),
      ask: (s) =>
        `Lid held still: on which side of the lid plug does ${coilOf(speakerPlace(subject, s))} own reading show up?`,
      phone:
        'Measure at the lid plug. Plug apart, on the lid half: how many ohms? Then plug together, just before it on the bike side: how many ohms? Or is there no such plug?',
      how: [
        'Lid plug apart, on the lid half: does the coil read?',
        'Plug together, on the bike’s side close to the plug: does the coil read?',
        'Keep the lid still for both.',
      ],
      why: 'Contacts, lid lead and bike loom look the same from the far end. Two readings at the plug tell them apart.',
      tool: 'meter',
      minutes: 5,
      conditions: ['key-off', 'rear-plug-apart', withSubject('lid-plug-apart', subject, 'silent'), 'meter-on-ohms'],
      sensible: (f) =>
        (is(f, 'run-ohms', 'open', 'high') || is(f, 'pop-run', 'dead', 'faint')) && !is(f, 'lid-check', 'no-plug'),
      // Too many ohms from the far end are those of a contact, and nobody knows of which until a film was seen on one.
      completes: (f) => is(f, 'run-ohms', 'high') && !is(f, 'contacts-look', 'film'),
      observes: ['run', 'speaker'],
      options: {
        'lid-side': 'Not even from the lid half',
        contacts: 'From the lid half, but not through the plug',
        'bike-side': 'Through the plug, but not from the far end',
        'no-plug': 'There is no such plug',
      },
      outcomes: {
        'lid-side': 'open in the lid',
        contacts: 'open in the plug',
        'bike-side': 'open in the bike’s loom',
        'no-plug': 'no such plug',
      },
      givenUnder: ['run-ohms'],
    }),
  silentSpeaker,
);
