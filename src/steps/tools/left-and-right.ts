import { formatQuantity } from '../../compute/quantity.ts';
import { REAR_OVER_FRONT_LOWEST_RATIO } from '../../compute/signal-path.ts';
import {
  type Band,
  bandOf,
  measurement,
  type Reading,
  type ReadingStep,
  type Situation,
  type Values,
} from '../step.ts';
import { ASKED_RATIO, leastReferenceV, nothingBelowV, tooLittle } from './ac-volts.ts';
import { HIDDEN_RATIO } from './residue.ts';

/** Two sides of an axle at one step of the volume: the stronger one says what the other should read. */
export type TwoSides = 'alike' | 'uneven' | 'one-only';

const stronger = ({ leftV = 0, rightV = 0 }: Values): number => Math.max(leftV, rightV);

function sideBands(values: Values, situation: Situation): readonly Band[] {
  const mostV = stronger(values);
  const nothingV = Math.max(nothingBelowV(mostV, situation), HIDDEN_RATIO * (values['residueV'] ?? 0));
  const alikeV = Math.max(nothingV, REAR_OVER_FRONT_LOWEST_RATIO * mostV);
  return [
    { label: 'nothing', low: 0, high: nothingV, mood: 'bad' },
    { label: 'weak', low: nothingV, high: alikeV, mood: 'unsure' },
    { label: 'healthy', low: alikeV, high: 1.2 * Math.max(mostV, alikeV), mood: 'good' },
  ];
}

function unusableSides(values: Values, situation: Situation) {
  const reading = (values['leftV'] ?? 0) >= (values['rightV'] ?? 0) ? 'leftV' : 'rightV';
  return tooLittle(reading, stronger(values), situation);
}

type Own = Pick<
  ReadingStep,
  'place' | 'id' | 'short' | 'ask' | 'phone' | 'why' | 'minutes' | 'conditions' | 'sensible' | 'observes' | 'probes'
> &
  Pick<Partial<ReadingStep>, 'ifCannot' | 'givenUnder' | 'cautions'> & {
    readonly where: string;
    /** What is read there. */
    readonly reading: (label: string, optional?: boolean) => Reading;
  };

/** A measurement of the left and the right of an axle, at one place of the way. */
export const leftAndRight = ({ where, reading, ...own }: Own): ReadingStep<TwoSides> =>
  measurement<TwoSides>({
    ...own,
    how: (s) => [
      'Stop the tone and read either side. What shows now is residue, not sound.',
      `Tone on again. Turn up until the stronger side reads ${formatQuantity(leastReferenceV(s) * ASKED_RATIO, 'V', 2)} or more. Leave the volume there.`,
      `One probe on each wire of a pair, never from a wire to metal: ${where}, left, then right.`,
    ],
    tool: 'meter',
    tones: ['400hz'],
    readings: {
      residueV: reading('Either side, tone off', true),
      leftV: reading('Left'),
      rightV: reading('Right'),
    },
    unusable: unusableSides,
    bands: (name, values, s) =>
      name === 'residueV' || values['leftV'] === undefined || values['rightV'] === undefined
        ? null
        : sideBands(values, s),
    judge: (values, s) => {
      const bands = sideBands(values, s);
      const labels = [values['leftV'], values['rightV']].map((valueV) => bandOf(bands, valueV ?? 0)?.label);
      return labels.includes('nothing') ? 'one-only' : labels.includes('weak') ? 'uneven' : 'alike';
    },
    formula: 'weaker side ÷ stronger side = 0.7 or more at one volume step',
    healthy: (values) =>
      `Healthy is ${REAR_OVER_FRONT_LOWEST_RATIO} of the stronger side or more${
        stronger(values) > 0 ? `: ${formatQuantity(REAR_OVER_FRONT_LOWEST_RATIO * stronger(values), 'V', 2)}` : ''
      }.`,
    outcomes: { alike: 'left and right alike', uneven: 'one side weak', 'one-only': 'one side only' },
    article: 'measure-a-speaker-pair',
  });
