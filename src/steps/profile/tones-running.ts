import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { isKnown, valuesIn } from '../outcome.ts';
import { measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';
import { engineShifts, OTHER_TONES } from './engine-shifts.ts';
import { ALL_TONES, badTones, FRONT_PAIR, limitV, referenceToneV, speakersOff, TONE_READINGS } from './tones.ts';
import { tonesOff } from './tones-off.ts';

/** The same tone with the engine off and running: within this it is the same. Common practice, no published source. */
const SAME_RATIO = 1.2;
/** A change that every profile with another EQ makes at least: 3 dB. What the meter leaves possible must rule it out. */
const LEAST_CHANGE_RATIO = 10 ** (3 / 20);

/** The tones that were there in one of the two states of the engine and lost in the last digit in the other. */
function lostTones(running: Values, { facts }: Situation) {
  const off = valuesIn(facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  const digitV = smallestDigitV(facts);
  return OTHER_TONES.filter((name) => {
    const [wasV, isV] = [off[name], running[name]];
    return wasV !== undefined && isV !== undefined && wasV > digitV !== isV > digitV;
  });
}

/** Where the 80 Hz tone may be clipped in one of the two states, a change hides: there "the same" says nothing. */
function nearTheLimit(running: Values, s: Situation): boolean {
  const off = valuesIn(s.facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  return Math.max(off['v80V'] ?? 0, running['v80V'] ?? 0) > limitV(s);
}

/** What 400 Hz read with the engine off: the level to come back to, whatever was played since. */
const offLevelV = (s: Situation): number =>
  valuesIn(s.facts[tonesOff.id], tonesOff as unknown as ReadingStep)['v400V'] ?? referenceToneV(s);

/** Where a tone stands with the engine running if nothing but the level moved; null without the readings for it. */
function sameBand(reading: string, values: Values, { facts }: Situation) {
  const off = valuesIn(facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  const [was400V, wasV, at400V] = [off['v400V'], off[reading], values['v400V']];
  if (reading === 'v400V' || !was400V || !wasV || !at400V) return null;
  const sameV = (wasV / was400V) * at400V;
  return { lowV: sameV / SAME_RATIO, highV: sameV * SAME_RATIO };
}

/** The same tones with the engine idling. Ratios, because nobody knows whether the volume step is still the same. */
export const tonesRunning: ReadingStep<'same' | 'changes' | 'unclear'> = measurement({
  place: 'profile',
  id: 'tones-running',
  short: 'Two tones, engine running',
  ask: 'Engine idling outdoors: what does the front pair read with each tone now?',
  phone:
    'Outside only, engine idling. One probe on each wire of the same front pair, never to metal. First the 400 tone: bring it back to the number it had. Then the 80 tone, volume untouched. What are the two numbers?',
  how: (s) => [
    ...speakersOff(s),
    'Outdoors, on the stand, in neutral. Start the engine and let it idle.',
    `Same tones as before. 400 Hz back to about ${formatQuantity(offLevelV(s), 'V', 2)}: the volume number may be different now.`,
    'Same front pair, same meter range. Do not touch the volume between the tones.',
  ],
  why: 'The unaltered profile changes its EQ when the engine starts. Only the ratio between the tones shows that, so the volume need not be exactly the same.',
  tool: 'meter',
  minutes: 10,
  conditions: ['controls-flat', 'amp-outputs-off', 'panel-off', 'engine-running', 'tone-400', 'meter-on-ac'],
  sensible: (f) => isKnown(f, 'tones-off'),
  observes: ['settings', 'profile', 'unit'],
  tones: ALL_TONES,
  probes: FRONT_PAIR,
  readings: TONE_READINGS,
  unusable: badTones,
  bands: (reading, values, s) => {
    const same = sameBand(reading, values, s);
    return (
      same && [
        { label: 'less', low: 0, high: same.lowV, mood: 'unsure' },
        { label: 'the same', low: same.lowV, high: same.highV, mood: 'good' },
        { label: 'more', low: same.highV, high: 2 * same.highV, mood: 'unsure' },
      ]
    );
  },
  judge: (values, s) => {
    const shifts = engineShifts(values, s);
    if (shifts.length === 0) return 'unclear';
    const moved = ({ shiftRatio, lowRatio, highRatio }: (typeof shifts)[number]) =>
      (shiftRatio > SAME_RATIO && lowRatio > 1) || (shiftRatio < 1 / SAME_RATIO && highRatio < 1);
    if (shifts.some(moved)) return 'changes';
    if (lostTones(values, s).length > 0) return 'unclear';
    const same = shifts.every(
      ({ shiftRatio, lowRatio, highRatio }) =>
        shiftRatio <= SAME_RATIO &&
        shiftRatio >= 1 / SAME_RATIO &&
        lowRatio > 1 / LEAST_CHANGE_RATIO &&
        highRatio < LEAST_CHANGE_RATIO,
    );
    return same && !nearTheLimit(values, s) ? 'same' : 'unclear';
  },
  formula: '(80 Hz ÷ 400 Hz) running ÷ (80 Hz ÷ 400 Hz) off = 1 where the EQ stays the same',
  healthy: (values, s) => {
    const same = sameBand('v80V', values, s);
    const here = same ? `: ${formatRange(same.lowV, same.highV, 'V')} at 80 Hz` : '';
    return `The same means within 20 % of the engine-off ratio${here}.`;
  },
  outcomes: { same: 'same as with the engine off', changes: 'changes when the engine runs', unclear: 'unclear' },
  article: 'two-tones-one-ratio',
  givenUnder: ['tones-off', 'meter-digit'],
});
