import { firstOf } from '../both.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const revsCompare: ChoiceStep<'gear' | 'revs' | 'same' | 'clean'> = choice({
  place: 'ears',
  id: 'revs-compare',
  short: 'Loud, idling, gear off',
  ask: 'Loud and idling, heated gear on as when it fails: does it come right at 2500 rpm, or with the gear off?',
  phone:
    'Outside, in neutral, ears covered, a loud track, heated gear and extra lights on as when it fails. Hold it at about 2500: does it come right? Back to idle, gear and extra lights off: right now? Or neither?',
  how: [
    'Ears covered. Idling, as loud as when it fails, a few seconds at a time. Heated gear and extra lights as they were then.',
    'Held at about 2500 rpm for ten seconds: does it come right?',
    'Back to idle. Heated gear and extra lights off: does it come right now?',
  ],
  why: 'At idle the alternator makes least. Bike, gear and music can take more than that, and then the battery pays.',
  tool: 'ears',
  compares: true,
  minutes: 3,
  conditions: ['head-unit-playing', 'engine-running'],
  sensible: (f) => is(f, 'loud-compare', 'ugly', 'cannot'),
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-listening'],
  both: firstOf('same', 'revs', 'gear', 'clean'),
  options: {
    gear: 'Right with the gear off, even at idle',
    revs: 'Right with the revs up only',
    same: 'Neither: it stays bad',
    clean: 'It is clean at idle as well',
  },
  outcomes: {
    gear: 'right with the gear off',
    revs: 'right with the revs up',
    same: 'stays bad',
    clean: 'clean at idle',
  },
  givenUnder: ['loud-compare'],
  ifCannot: 'Not indoors: exhaust gas kills. Look whether the lights brighten from idle to 2500 rpm instead.',
});
