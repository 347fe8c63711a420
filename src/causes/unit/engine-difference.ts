import { gainFromVoltageRatioDb } from '../../compute/decibel.ts';
import type { Findings } from '../../steps/outcome.ts';
import { smallestDigitV } from '../../steps/tools/smallest-digit.ts';
import type { Figure } from '../figure.ts';

/** What the two tones read with the engine off and running come to, in decibels, with what the meter leaves open. */

/** A meter on one range: a digit either way on each reading; its error in proportion cancels. */
function band(readings: readonly { readonly volts: number; readonly up: boolean }[], digitV: number) {
  const dB = readings.reduce(
    (sum, { volts, up }) => sum + (up ? 1 : -1) * gainFromVoltageRatioDb({ voltageRatio: volts }),
    0,
  );
  const offDb = readings.reduce(
    (sum, { volts }) => sum + gainFromVoltageRatioDb({ voltageRatio: 1 + digitV / volts }),
    0,
  );
  return [dB - offDb, dB + offDb] as const;
}

const isRead = (volts: number | undefined, digitV: number): volts is number => volts !== undefined && volts > digitV;

/** How far 80 Hz moved against 400 Hz when the engine ran, and how far 400 Hz itself did, where the volume was left alone. */
export function engineFigures(f: Findings): readonly Figure[] {
  const digitV = smallestDigitV(f.facts);
  const [off, running] = [f.values('tones-off'), f.values('tones-running')];
  const [was80, was400, is80, is400] = [off['v80V'], off['v400V'], running['v80V'], running['v400V']];
  if (!isRead(was400, digitV) || !isRead(is400, digitV)) return [];
  const at400: Figure = {
    id: 'moved-400',
    label: '400 Hz, engine running over off, volume untouched',
    value: band(
      [
        { volts: is400, up: true },
        { volts: was400, up: false },
      ],
      digitV,
    ),
    unit: 'dB',
  };
  if (!isRead(was80, digitV) || !isRead(is80, digitV)) return [at400];
  return [
    {
      id: 'moved-80',
      label: '80 Hz against 400 Hz, engine running over off',
      value: band(
        [
          { volts: is80, up: true },
          { volts: was400, up: true },
          { volts: was80, up: false },
          { volts: is400, up: false },
        ],
        digitV,
      ),
      unit: 'dB',
    },
    at400,
  ];
}

/** The change that two readings of one ratio must not exceed to be the same: a fifth. */
export const SAME_FIGURE: Figure = {
  id: 'same-within',
  label: 'Counts as the same within',
  value: gainFromVoltageRatioDb({ voltageRatio: 1.2 }),
  unit: 'dB',
};

export const RATIO_CHECK = {
  byMeter:
    'Two tones at one low step, engine off, then idling outdoors: does the ratio of 80 to 400 Hz move by more than a fifth?',
  needs: ['tone-400', 'engine-running'],
  touches: ['unit-front-plus'],
} as const;

export const RATIO_STAYS = {
  byMeter: 'Two tones at one low step, engine off and idling: the two ratios lie within a fifth of each other.',
  needs: ['tone-400'],
  touches: ['unit-front-plus'],
} as const;
