import { SENSE_DC_HIGHEST_V, SENSE_DC_LOWEST_V, SENSE_HIGHEST_V, SENSE_LOWEST_V } from '../../compute/amp-supply.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { ARRIVES_HIGHEST_RATIO, ARRIVES_LOWEST_RATIO, SIDES_APART_RATIO } from '../../compute/signal-path.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { ProofOfCure } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { ampOf } from '../the-amp.ts';

/** What has to arrive at the inputs of an amplifier, for it to play and, where it listens, to wake. */

type Input = 'speaker' | 'line';
const inputOf = (f: Findings): Input => ampOf(f).input ?? 'speaker';

export const WAKES_BY_SOUND_ABOVE: Figure = {
  id: 'wakes-by-sound',
  label: 'Amplifiers that wake by sound wake above',
  value: [SENSE_LOWEST_V, SENSE_HIGHEST_V],
  unit: 'V',
};
export const WAKES_BY_DC_ABOVE: Figure = {
  id: 'wakes-by-dc',
  label: 'Amplifiers that wake by DC wake above',
  value: [SENSE_DC_LOWEST_V, SENSE_DC_HIGHEST_V],
  unit: 'V',
};

function wakesAbove(f: Findings): readonly Figure[] {
  const { turnOn } = ampOf(f);
  if (turnOn === 'signal') return [WAKES_BY_SOUND_ABOVE];
  return turnOn === 'dc' ? [WAKES_BY_DC_ABOVE] : [];
}

export const arrivesFigures = (f: Findings, input = inputOf(f)): readonly Figure[] => [
  input === 'line'
    ? {
        id: 'sides-apart',
        label: 'Left and right apart, healthy',
        value: 100 * SIDES_APART_RATIO,
        unit: '%',
        limit: 'at most',
      }
    : {
        id: 'arrives-healthy',
        label: 'At its inputs over what leaves the head unit, healthy',
        value: [100 * ARRIVES_LOWEST_RATIO, 100 * ARRIVES_HIGHEST_RATIO],
        unit: '%',
      },
  ...wakesAbove(f),
];

export const WAKES_AT_USUAL_VOLUME =
  'The amplifier wakes within 3 seconds at your usual volume and stays awake for 10 minutes.';

const listens = (f: Findings): boolean => ['signal', 'dc'].includes(ampOf(f).turnOn ?? '');

/** The check after a cure at the inputs, for one that is switched by a wire and for one that listens. */
export const arrives = (f: Findings, input = inputOf(f)): ProofOfCure => ({
  byEar: listens(f) ? `${WAKES_AT_USUAL_VOLUME} Its speakers play.` : 'Its speakers play, and still do after a ride.',
  byMeter:
    input === 'line'
      ? `400 Hz tone: both inputs carry it, left and right within ${formatQuantity(100 * SIDES_APART_RATIO, '%')} of each other.`
      : `400 Hz tone, one volume step: each input reads ${ARRIVES_LOWEST_RATIO} to ${ARRIVES_HIGHEST_RATIO} of the pair that feeds it, at the head unit.`,
  needs: ['tone-400'],
});
