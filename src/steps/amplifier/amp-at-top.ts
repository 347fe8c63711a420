import { gainTargetV } from '../../compute/gain.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { ampEstimate } from '../../rig/rig.ts';
import { firstOf } from '../both.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { ampName, atAmp, theAmp } from '../fitted/the-amp.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation } from '../step.ts';

/** A sine that is cut off by 1 dB reads 8 % over the limit on a plain meter; half of that tells it from a whole one. */
const OVER_RATIO = 1.04;
/** Papers and meters agree to a few hundredths. An estimate. */
const UNDER_RATIO = 0.95;

/** The volts at which the amplifier clips: from its watts and ohms, or from those that are usual. */
export function ampClipsV(situation: Situation): { readonly lowV: number; readonly highV: number } {
  const amp = theAmp(situation);
  const [power, load] = [ampEstimate(amp, 'powerW'), ampEstimate(amp, 'ratedOhm')];
  return {
    lowV: gainTargetV({ powerW: power.low, loadOhm: load.low }),
    highV: gainTargetV({ powerW: power.high, loadOhm: load.high }),
  };
}

const bandsAtTop = (situation: Situation): readonly Band[] => {
  const { lowV, highV } = ampClipsV(situation);
  return [
    { label: 'below', low: 0, high: UNDER_RATIO * lowV, mood: 'good' },
    { label: 'unclear', low: UNDER_RATIO * lowV, high: OVER_RATIO * highV, mood: 'unsure' },
    { label: 'cut off', low: OVER_RATIO * highV, high: 1.6 * highV, mood: 'bad' },
  ];
};

const outputReading = (label: string) => ({
  label,
  unit: 'V' as const,
  possible: [0, 120] as const,
  impossible: 'No amplifier on a 12 V bike gives that. Is the meter on AC volts, and on the right range?',
});

/** What the amplifier gives at the step at which it is ugly, against the root of its watts times its ohms. */
export const ampAtTop: ReadingStep<'bass' | 'all' | 'below' | 'unclear'> = measurement({
  place: 'amplifier',
  id: 'amp-at-top',
  short: atAmp('Its output at that volume'),
  ask: (s) => `At the volume step where it distorts: what does an output of ${ampName(s)} read with each tone?`,
  phone: (s) =>
    `Key off and speakers off ${ampName(s)} first. Then the same volume number as when it distorts. One probe on each of the two thick screws of one output, never to metal. What number with the 80 tone? And with the 400 tone?`,
  how: (s) => [
    'Leave tone controls, gain and filter as they are when it distorts: a high-pass on takes some of the 80 Hz, as it does of the music. Phone volume full.',
    'Bring the volume up from zero to the step where it distorts. Read with 80 Hz, then with 400 Hz. Volume back to zero.',
    ...(theAmp(s).powerW === undefined || theAmp(s).ratedOhm === undefined
      ? ['Enter the watts and ohms of a channel in “my bike”: the limit is the square root of watts × ohms.']
      : []),
  ],
  why: 'An amplifier driven past what its supply can give clips the wave flat. A plain meter then reads more than the square root of watts × ohms.',
  tool: 'meter',
  minutes: 8,
  conditions: ['amp-uncovered', 'amp-outputs-off', 'tone-80', 'meter-on-ac'],
  sensible: ampMayBeThere,
  observes: ['settings', 'profile', 'unit', 'amp'],
  tones: ['80hz', '400hz'],
  probes: { red: 'amp-out-plus', black: 'amp-out-minus' },
  readings: { v80V: outputReading('80 Hz tone'), v400V: outputReading('400 Hz tone') },
  bands: (_, __, s) => bandsAtTop(s),
  judge: (values, s) => {
    const label = (name: 'v80V' | 'v400V') => bandOf(bandsAtTop(s), values[name] ?? 0)?.label ?? 'cut off';
    if (label('v400V') === 'cut off') return 'all';
    if (label('v80V') === 'cut off') return 'bass';
    return label('v80V') === 'below' && label('v400V') === 'below' ? 'below' : 'unclear';
  },
  formula: 'it clips at √(P · R), and a plain meter reads up to 1.57 times that when it does',
  healthy: (_, s) => {
    const { lowV, highV } = ampClipsV(s);
    return lowV === highV
      ? `It clips at ${formatQuantity(lowV, 'V', 3)}. More than ${formatQuantity(OVER_RATIO * highV, 'V', 3)} means a clipped wave.`
      : `Its watts and ohms are not known: it clips somewhere between ${formatQuantity(lowV, 'V', 2)} and ${formatQuantity(highV, 'V', 2)}.`;
  },
  both: firstOf('all', 'bass', 'unclear', 'below'),
  outcomes: { bass: 'bass clips', all: 'everything clips', below: 'below its limit', unclear: 'unclear' },
  article: 'clipping-and-coils',
  givenUnder: ['meter-digit'],
});
