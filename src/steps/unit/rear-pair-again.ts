import { formatQuantity } from '../../compute/quantity.ts';
import { is } from '../outcome.ts';
import { measurement, type ReadingStep } from '../step.ts';
import { leastReferenceV } from '../tools/ac-volts.ts';
import { beforeTheTone } from './before-the-tone.ts';
import { type RearPairOutcome, rearPair } from './rear-pair.ts';

/** The same once more, where a rear that is there and weak may be a fader, a balance or a bass control that moved. */
export const rearPairAgain: ReadingStep<RearPairOutcome> = measurement({
  ...rearPair,
  place: 'unit',
  id: 'rear-pair-again',
  short: 'Rear pairs again',
  ask: 'With fader, balance, bass and treble exactly at 0: what do the same three pairs read now?',
  phone:
    'Stop the tone: one rear pair at the radio, one probe on each wire, never to metal: what number? Tone on again, same volume for all three: front pair, rear left, rear right. What numbers?',
  how: (s) => [
    ...beforeTheTone(s),
    'Fader and balance exactly at 0, rear control up.',
    'Stop the tone and read one rear pair.',
    `Tone on again until the front pair reads ${formatQuantity(leastReferenceV(s) * 1.2, 'V', 2)} or more. Leave the volume there.`,
    'Front, rear left, rear right, as before.',
  ],
  why: 'A weak rear pair, or one side only, is more often a setting than a broken output.',
  // Three of its own. What it needs stands from the first reading.
  minutes: 8,
  sensible: (f) => is(f, 'rear-pair', 'none', 'uneven', 'one-only'),
  givenUnder: ['meter-digit', 'rear-pair'],
  ifCannot: 'We carry on with the first reading.',
});
