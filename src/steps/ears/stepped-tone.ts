import { firstOf } from '../both.ts';
import { type ChoiceStep, choice } from '../step.ts';

/** A sine that gets louder by steps: what is cut off turns rough, what is loose rattles beside it. */
export const steppedTone: ChoiceStep<'clean' | 'rough' | 'rattles' | 'chops'> = choice({
  place: 'ears',
  id: 'stepped-tone',
  short: 'Tone in steps',
  ask: 'At that volume, play the 80 Hz tone that rises in steps: how does it change?',
  phone:
    'Volume at zero, start the stepped tone, then come up to the number where it distorts, ears covered, everybody at arm’s length. Does the hum stay round, turn raspy, bring a rattle with it, or cut in and out?',
  how: [
    'Volume at zero, start the stepped tone, then up to the step where music distorts.',
    'Seven steps of 3 dB, two seconds each, the last at full scale. A round hum that gets louder is clean.',
    'Once through is enough, then stop it. Ears covered, nobody near a speaker.',
  ],
  why: 'A clean hum has one pitch. Clipped, it suddenly gains a rasp of higher ones from one step to the next. A loose part rattles along with it.',
  tool: 'ears',
  minutes: 3,
  conditions: ['tone-80'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  tones: ['stepped-80hz'],
  cautions: ['loud-listening'],
  both: firstOf('chops', 'rough', 'rattles', 'clean'),
  options: {
    clean: 'It stays a round hum up to the last step',
    rough: 'From some step on, the hum itself turns raspy',
    rattles: 'Something rattles or scrapes along with it',
    chops: 'It cuts in and out',
  },
  outcomes: { clean: 'stays clean', rough: 'turns raspy', rattles: 'something rattles', chops: 'cuts in and out' },
  ifCannot: 'Too loud for where you are: skip it.',
});
