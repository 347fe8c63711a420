import { DENSE_MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import {
  cutOutA,
  REMOTE_LOSS_V,
  REMOTE_ON_HIGHEST_V,
  REMOTE_ON_LOWEST_V,
  UNDERVOLTAGE_CUT_HIGHEST_V,
  UNDERVOLTAGE_CUT_LOWEST_V,
} from '../../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { dropV } from '../../compute/wire.ts';
import { estimate } from '../../rig/rig.ts';
import { ampPair, theAmp } from '../../steps/fitted/the-amp.ts';
import type { Findings } from '../../steps/outcome.ts';
import { batteryV, drawA, healthyPathOhm, LAMP_A } from '../../steps/supply/amp-feed.ts';
import { mainFuseNumber } from '../main-fuse.ts';
import type { RemedyNumber } from '../verdict.ts';

/** The numbers that several verdicts about an amplifier show. */

export const IDLE_A = 0.9;

const number = (label: string, value: string): RemedyNumber => ({ label, value });

/** What an amplifier is called where a bike has two. */
export const ampName = (f: Findings): string =>
  (f.rig.amps?.length ?? 0) > 1
    ? ampPair(f) === 'front'
      ? 'The front amplifier'
      : 'The rear amplifier'
    : 'The amplifier';

const runningV = (f: Findings) => estimate(f.rig, 'supplyRunningV').value;
export const fullDrawA = (f: Findings): number => drawA(f, 1, runningV(f));
export const denseDrawA = (f: Findings): number => drawA(f, DENSE_MUSIC_AVERAGE_RATIO, runningV(f));

export const drawNumbers = (f: Findings): readonly RemedyNumber[] => [
  number('Current with dense loud music', formatQuantity(denseDrawA(f), 'A', 2)),
  number('Current on full bass', formatQuantity(fullDrawA(f), 'A', 2)),
];

export const fuseNumbers = (f: Findings): readonly RemedyNumber[] => [mainFuseNumber(theAmp(f)), ...drawNumbers(f)];

export const cutOut = number(
  'It goes off below, at its own terminals',
  formatRange(UNDERVOLTAGE_CUT_LOWEST_V, UNDERVOLTAGE_CUT_HIGHEST_V, 'V'),
);

/** What healthy leads lose, with the lamp and on full bass. */
export function pathNumbers(f: Findings, way: 'plus' | 'ground'): readonly RemedyNumber[] {
  const { plusOhm, groundOhm } = healthyPathOhm(f);
  const resistanceOhm = way === 'plus' ? plusOhm : groundOhm;
  const lost = (currentA: number) => formatQuantity(dropV({ currentA, resistanceOhm }), 'V', 2);
  return [
    number(`Lost on the ${way} way with a 55 W lamp, healthy`, `below ${lost(LAMP_A)}`),
    number(`Lost there on full bass, healthy`, `below ${lost(fullDrawA(f))}`),
  ];
}

/** What a bad path was read to have, and the current at which it cuts the amplifier off. */
export function readPath(f: Findings, reading: 'plusDropV' | 'groundDropV'): readonly RemedyNumber[] {
  const lostV = f.values('supply-under-load')[reading];
  if (lostV === undefined || lostV <= 0) return [];
  const resistanceOhm = lostV / LAMP_A;
  const supplyV = f.values('supply-under-load')['batteryV'] ?? batteryV(f);
  return [
    number('Lost there with the lamp, as read', formatQuantity(lostV, 'V', 2)),
    number('So its resistance is', formatQuantity(resistanceOhm, 'Ω', 2)),
    ...(supplyV > UNDERVOLTAGE_CUT_HIGHEST_V
      ? [
          number(
            'It may cut out from a current of',
            formatQuantity(cutOutA({ supplyV, cutV: UNDERVOLTAGE_CUT_HIGHEST_V, resistanceOhm }), 'A', 2),
          ),
        ]
      : []),
  ];
}

export const remoteNumbers = (f: Findings): readonly RemedyNumber[] => {
  const readV = f.values('remote-volts')['remoteV'];
  return [
    ...(readV === undefined ? [] : [number('Remote terminal, as read', formatQuantity(readV, 'V', 2))]),
    number('Remote terminal when on, healthy', `above ${formatQuantity(batteryV(f) - REMOTE_LOSS_V, 'V', 3)}`),
    number('Amplifiers switch on above', formatRange(REMOTE_ON_LOWEST_V, REMOTE_ON_HIGHEST_V, 'V')),
    number('Fuse of the remote wire', '1 A'),
  ];
};
