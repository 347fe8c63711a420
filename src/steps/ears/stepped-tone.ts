import { type ChoiceStep, choice } from '../step.ts';

/** A sine that gets louder by steps: what is cut off turns rough, what is loose rattles beside it. */
export const steppedTone: ChoiceStep<'clean' | 'rough' | 'rattles' | 'chops'> = choice({
  place: 'ears',
  id: 'stepped-tone',
  short: 'Tone in steps',
  ask: 'At that volume step play the 80 Hz tone that rises in steps: what becomes of it?',
  phone:
    'Volume at zero, start the tone in steps, then come up to the ugly number, ears covered, all at arm’s length. Does the hum stay round, turn raspy, get a rattle beside it, or cut in and out?',
  how: [
    'Volume at zero, start the stepped tone, then up to the step at which music is ugly.',
    'Seven steps of 3 dB, two seconds each, the last at full scale. A round hum that gets louder is clean.',
    'Once through is enough: stop it then. Ears covered, nobody near a speaker.',
  ],
  why: 'A clean hum has one pitch. Cut off at a limit it gains a rasp of higher ones, from one step to the next. A loose part rattles beside it.',
  tool: 'ears',
  minutes: 3,
  conditions: ['tone-80'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  tones: ['stepped-80hz'],
  cautions: ['loud-listening'],
  options: {
    clean: 'It stays a round hum to the last step',
    rough: 'From some step on the hum itself is raspy',
    rattles: 'Something rattles or scrapes beside it',
    chops: 'It cuts in and out',
  },
  outcomes: { clean: 'stays clean', rough: 'turns raspy', rattles: 'a rattle beside it', chops: 'cuts in and out' },
  ifCannot: 'Too loud for where you are: go on without.',
});
