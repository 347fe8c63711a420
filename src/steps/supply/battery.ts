import {
  CHARGING_MOST_V,
  KEY_ON_FLAT_V,
  KEY_ON_HEALTHY_V,
  OVERVOLTAGE_CUT_HIGHEST_V,
} from '../../compute/amp-supply.ts';
import type { Band, Reading } from '../step.ts';
import { MOST_V } from '../tools/dc-volts.ts';

export const BATTERY: Reading = {
  label: 'Battery positive',
  unit: 'V',
  probes: { red: 'battery-plus', black: 'battery-minus' },
  possible: [8, MOST_V],
  impossible:
    'A battery that runs the head unit reads 8 V or more. Is the meter on DC volts, black on the negative post?',
};

export const BATTERY_BANDS: readonly Band[] = [
  { label: 'nearly empty', low: 0, high: KEY_ON_FLAT_V, mood: 'bad' },
  { label: 'low', low: KEY_ON_FLAT_V, high: KEY_ON_HEALTHY_V, mood: 'unsure' },
  { label: 'healthy', low: KEY_ON_HEALTHY_V, high: CHARGING_MOST_V, mood: 'good' },
  { label: 'too high', low: CHARGING_MOST_V, high: OVERVOLTAGE_CUT_HIGHEST_V, mood: 'bad' },
];
