import { gainRatio } from '../../compute/gain.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { SIDES_APART_RATIO } from '../../compute/signal-path.ts';
import type { Axle } from '../../rig/corner.ts';
import { loweredV, unloadedFullV } from '../../rig/levels.ts';
import type { Findings } from '../../steps/outcome.ts';
import { gainFigures, gainTargets, HIGHPASS_BACK_ON, HIGHPASS_OFF, outputInWords } from '../amp-load.ts';
import type { ProofOfCure } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { ratingAssumed } from '../read-first.ts';
import type { RepairAction } from '../repair-action.ts';
import { ampOf } from '../the-amp.ts';

/** How the gain of an amplifier is set: the volts, the way to them, and what it does to the bike. */

/** What comes in: speaker wires, as long as nobody said otherwise. */
type Input = 'speaker' | 'line';
const inputOf = (f: Findings): Input => ampOf(f).input ?? 'speaker';

/** What it makes of each volt of its input, when the loudest clean input gives the output to set. */
const outputPerVolt = (f: Findings, loudestInputV: number): number =>
  gainRatio({ outputV: gainTargets(f).outputV, inputV: loudestInputV });

/** What a converter makes of the signal is its own affair: only the output counts there. */
function perVoltFigures(f: Findings, input: Input): readonly Figure[] {
  if (input === 'line') return [];
  const fullV = unloadedFullV(f.rig);
  return [
    {
      id: 'output-per-volt-full',
      label: 'Output for each volt at its input, full level',
      value: outputPerVolt(f, fullV),
      unit: 'V',
    },
    {
      id: 'output-per-volt-lowered',
      label: 'The same behind an amplified profile',
      value: outputPerVolt(f, loweredV(f.rig).value),
      unit: 'V',
    },
  ];
}

export const settingFigures = (f: Findings, input = inputOf(f)): readonly Figure[] => [
  ...gainFigures(f),
  ...perVoltFigures(f, input),
];

export const setGain = (f: Findings, axle: Axle | 'both'): RepairAction => ({
  do: 'set-gain',
  axle,
  outputV: gainTargets(f).outputV,
});

/** The way to the right gain, in order. */
export const gainSteps = (f: Findings, input = inputOf(f)): readonly string[] => [
  ...(ratingAssumed(f)
    ? [
        'Look up the watts and ohms of one channel in its papers. Different from above? It clips at the square root of watts times ohms, in volts.',
      ]
    : []),
  `Key off, speakers off the amplifier, range set to what comes in, ${HIGHPASS_OFF}. Key on.`,
  ...(input === 'speaker'
    ? [
        '400 Hz tone at a low step: turn the gain until the output reads the figure above for each volt at its input. Not sure which level is stored? Full level, the lower one.',
      ]
    : []),
  `80 Hz tone, step by step up to your usual top step: no output above ${outputInWords(f)}.`,
  `Volume at zero, key off, ${HIGHPASS_BACK_ON}, speakers on.`,
];

export const AFTER_THE_VISIT = 'After the visit set the gain, in the steps below.';

export const GAIN_TOOLS = 'Meter, small screwdriver, the test tones';

export const CHANNELS_ALIKE = {
  byMeter: `400 Hz tone, speakers off: the channels of its output read within ${formatQuantity(100 * SIDES_APART_RATIO, '%')} of each other.`,
  needs: ['tone-400'],
  touches: ['amp-out-plus'],
} as const satisfies Partial<ProofOfCure>;
