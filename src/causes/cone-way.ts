import { levelAtPowerDb, lowestFrequencyHz } from '../compute/sound-level.ts';
import { ampEstimate } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';
import type { Figure } from './figure.ts';
import { ampOf } from './the-amp.ts';

/** A speaker of 16 cm as they are sold for fairings and lids: cone, way to one side, level from a watt. From memory. */
const CONE = { coneM2: 0.0135, excursionM: 0.004 };
const SENSITIVITY_DB = 88;
/** Bass of dense music holds about a tenth of the full power. An estimate. */
const BASS_SHARE_RATIO = 0.1;

/** How far down such a cone follows what the amplifier can give, before it runs out of way. */
export function coneFigures(f: Findings): readonly Figure[] {
  const powerW = ampEstimate(ampOf(f), 'powerW').value;
  const downTo = (share: number) =>
    lowestFrequencyHz({ ...CONE, levelDb: levelAtPowerDb({ sensitivityDb: SENSITIVITY_DB, powerW: share * powerW }) });
  return [
    {
      id: 'way-ends-full',
      label: 'At full power a 16 cm cone with 4 mm of travel runs out below',
      value: downTo(1),
      unit: 'Hz',
    },
    { id: 'way-ends-music', label: 'With bass at a tenth of it, below', value: downTo(BASS_SHARE_RATIO), unit: 'Hz' },
  ];
}
