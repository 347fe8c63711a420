import { BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V, cleanOutputV } from '../../compute/level.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { estimate, type Rig } from '../../rig/rig.ts';
import { speakersOff } from '../profile/tones.ts';
import { type Band, bandOf, measurement, type ReadingStep, type Situation } from '../step.ts';
import { acReading } from '../tools/ac-volts.ts';

/** A reading this near to the limit is at it: supply and meter are known to a few hundredths. An estimate. */
const AT_LIMIT_RATIO = 0.97;
/** And this far below it no tone is cut off. An estimate. */
const CLEAN_RATIO = 0.88;

/** The loudest clean sine of a front pair with the engine off: into its speaker, or into an amplifier that draws nothing. */
export function cleanFrontV(rig: Rig): { readonly lowV: number; readonly highV: number } {
  const supply = estimate(rig, 'supplyOffV');
  const [most, least] = [BRIDGE_LOSS_LOADED_V, BRIDGE_LOSS_UNLOADED_V];
  return {
    lowV: cleanOutputV({ supplyV: supply.low, lossV: rig.frontFedBy === 'amp' ? least : most }),
    highV: cleanOutputV({ supplyV: supply.high, lossV: rig.frontFedBy === 'unit' ? most : least }),
  };
}

const bandsAtTop = ({ rig }: Situation): readonly Band[] => {
  const { lowV, highV } = cleanFrontV(rig);
  return [
    { label: 'clean', low: 0, high: CLEAN_RATIO * lowV, mood: 'good' },
    { label: 'unclear', low: CLEAN_RATIO * lowV, high: AT_LIMIT_RATIO * lowV, mood: 'unsure' },
    { label: 'at its limit', low: AT_LIMIT_RATIO * lowV, high: 1.6 * highV, mood: 'bad' },
  ];
};

/** What the head unit sends at the step at which it is ugly, against what it can send clean. */
export const unitAtTop: ReadingStep<'clips' | 'clean' | 'unclear'> = measurement({
  place: 'unit',
  id: 'unit-at-top',
  short: 'Head unit at that volume',
  ask: 'At the volume step where it distorts: what does a front pair of the head unit read with each tone?',
  phone:
    'Same volume number as when it distorts, five seconds at a time. One probe on each wire of one front pair at the radio, never to metal. What number with the 80 tone? And with the 400 tone?',
  how: (s) => [
    ...speakersOff(s),
    ...(s.rig.frontFedBy === 'amp' ? [] : ['Front speakers on the head unit? Bursts under 5 seconds, ears covered.']),
    'Leave the tone controls as they are when it distorts. Phone volume full.',
    'Bring the volume up from zero to the step where it distorts. Read with 80 Hz, then with 400 Hz. Volume back to zero.',
  ],
  why: 'A head unit cannot send more than its supply. At that limit the wave is clipped flat, and nothing after it can undo that.',
  tool: 'meter',
  minutes: 8,
  conditions: ['amp-outputs-off', 'panel-off', 'tone-80', 'meter-on-ac'],
  observes: ['settings', 'profile', 'unit'],
  tones: ['80hz', '400hz'],
  probes: { red: 'unit-front-plus', black: 'unit-front-minus' },
  readings: { v80V: acReading('80 Hz tone'), v400V: acReading('400 Hz tone') },
  bands: (_, __, s) => bandsAtTop(s),
  judge: (values, s) => {
    const labels = [values['v80V'], values['v400V']].map((volts) => bandOf(bandsAtTop(s), volts ?? 0)?.label);
    if (labels.some((label) => label === 'at its limit' || label === undefined)) return 'clips';
    return labels.includes('unclear') ? 'unclear' : 'clean';
  },
  formula: 'loudest clean sine = (supply − what the output loses) ÷ √2',
  healthy: (_, s) => {
    const { lowV } = cleanFrontV(s.rig);
    return `Below ${formatQuantity(CLEAN_RATIO * lowV, 'V', 2)} no tone is clipped. From about ${formatQuantity(AT_LIMIT_RATIO * lowV, 'V', 2)} it is at its limit: a meter then shows up to 1.11 times the peak.`;
  },
  outcomes: { clips: 'at its limit', clean: 'below its limit', unclear: 'unclear' },
  article: 'clipping-and-coils',
  givenUnder: ['meter-digit'],
});
