import { RIPPLE_BAD_V, RIPPLE_USUAL_V } from '../compute/alternator.ts';
import {
  CHARGING_HEALTHY_HIGHEST_V,
  CHARGING_HEALTHY_LOWEST_V,
  KEY_ON_FLAT_V,
  KEY_ON_HEALTHY_V,
  sagV,
} from '../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import type { Findings } from '../steps/outcome.ts';
import { BATTERY_OHM, LAMP_A } from '../steps/supply/amp-feed.ts';
import { fullBassA } from './amp-load.ts';
import type { Figure } from './figure.ts';
import { lampDrewA } from './supply-ways.ts';
import { isWithoutAmp } from './the-amp.ts';

/** A battery as it was read, and what sound ones read. */

/** Rested volts of a full battery. Common practice, no published source; lithium iron phosphate from memory. */
export const FULL_AND_RESTED = 'Full and rested: lead-acid 12.7 V or more, lithium iron phosphate 13.2 V or more.';
export const CHARGING_BAND = formatRange(CHARGING_HEALTHY_LOWEST_V, CHARGING_HEALTHY_HIGHEST_V, 'V');
export const RUNNING = 'Outdoors, about 3000 rpm, lights on';

/** At rest and with the lamp, where each was read. */
const restV = (f: Findings): number | undefined => f.values('amp-terminals')['batteryV'];
const loadedV = (f: Findings): number | undefined => f.values('supply-under-load')['batteryV'];

export function batteryRead(f: Findings): readonly Figure[] {
  const [rest, loaded] = [restV(f), loadedV(f)];
  return [
    ...(rest === undefined
      ? []
      : [{ id: 'battery-read', label: 'Battery, as read', value: rest, unit: 'V', digits: 3 } as const]),
    ...(loaded === undefined
      ? []
      : [
          {
            id: 'battery-with-lamp',
            label: 'Battery with a 55 W lamp, as read',
            value: loaded,
            unit: 'V',
            digits: 3,
          } as const,
        ]),
  ];
}

export const KEY_ON_FIGURES: readonly Figure[] = [
  {
    id: 'key-on-healthy',
    label: 'Key on, engine off, healthy',
    value: KEY_ON_HEALTHY_V,
    unit: 'V',
    limit: 'at least',
    digits: 3,
  },
  { id: 'nearly-empty', label: 'Nearly empty', value: KEY_ON_FLAT_V, unit: 'V', limit: 'below', digits: 3 },
];

export const CHARGING_FIGURE: Figure = {
  id: 'charging-healthy',
  label: 'At about 3000 rpm, lights on, healthy',
  value: [CHARGING_HEALTHY_LOWEST_V, CHARGING_HEALTHY_HIGHEST_V],
  unit: 'V',
};

/** At idle and with the revs up, where both were read. */
export function chargingRead(f: Findings): readonly Figure[] {
  const { idleV, fastV } = f.values('charging-volts');
  return [
    ...(idleV === undefined
      ? []
      : [{ id: 'charging-idle-read', label: 'At idle, as read', value: idleV, unit: 'V', digits: 3 } as const]),
    ...(fastV === undefined
      ? []
      : [{ id: 'charging-fast-read', label: 'At 3000 rpm, as read', value: fastV, unit: 'V', digits: 3 } as const]),
  ];
}

/** What the charging leaves on the battery, where it was read. */
export function rippleRead(f: Findings): readonly Figure[] {
  const { rippleV } = f.values('battery-ripple');
  return rippleV === undefined
    ? []
    : [{ id: 'ripple-read', label: 'AC at the posts, as read', value: rippleV, unit: 'V' }];
}

export const RIPPLE_FIGURES: readonly Figure[] = [
  { id: 'ripple-usual', label: 'AC at the posts, usual', value: RIPPLE_USUAL_V, unit: 'V', limit: 'at most' },
  { id: 'ripple-bad', label: 'Far too much', value: RIPPLE_BAD_V, unit: 'V', limit: 'above' },
];

/** Regulator or stator: what whoever is used to it reads, and what it says. */
export const STATOR_CHECK: readonly string[] = [
  'Engine off, stator plug apart, meter on ohms: open from each of its pins to the frame, next to nothing between any two.',
  'Outdoors, plug apart, meter on AC, probes pushed in before you start the engine: three readings the same? There are more than 60 V here: hands off, and leave it to a workshop if you are not used to it.',
  'All three the same: the regulator. One odd, or ohms to the frame: the stator or its plug. Replace that one.',
];

/** What it lost to the lamp is its inner resistance, and that tells what full bass does to it. */
export function givesWay(f: Findings): readonly Figure[] {
  const [openV, underLoadV, currentA] = [restV(f), loadedV(f), lampDrewA(f)];
  if (openV === undefined || underLoadV === undefined || currentA === undefined) return [];
  const lostV = openV - underLoadV;
  if (lostV <= 0) return [];
  const atFullBassV = sagV({ openV, internalOhm: lostV / currentA, currentA: fullBassA(f) });
  return [
    { id: 'battery-lost', label: 'Lost in the battery', value: lostV, unit: 'V' },
    { id: 'battery-lost-healthy', label: 'A good one loses about', value: LAMP_A * BATTERY_OHM, unit: 'V' },
    { id: 'battery-on-full-bass', label: 'Full bass would pull it down to about', value: atFullBassV, unit: 'V' },
  ];
}

/** What is not to blame for a battery. */
export const whatItFeeds = (f: Findings): string => (isWithoutAmp(f) ? 'A head unit' : 'An amplifier');

/** What is heard once the supply holds. */
export const staysOn = (f: Findings): string => (isWithoutAmp(f) ? 'the music plays on' : 'the amplifier stays on');

export const KEY_ON_OR_MORE = `${formatQuantity(KEY_ON_HEALTHY_V, 'V')} or more`;
export const NEARLY_EMPTY = `below ${formatQuantity(KEY_ON_FLAT_V, 'V')}`;
