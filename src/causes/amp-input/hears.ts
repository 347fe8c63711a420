import { voltageRatio } from '../../compute/decibel.ts';
import { levelV } from '../../compute/level.ts';
import { estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Figure } from '../figure.ts';
import { WAKES_BY_SOUND_ABOVE } from './arrives.ts';

/** What an amplifier that wakes by sound gets to hear: as read, by its papers, and what a watt is at each level. */
export function hearsFigures(f: Findings): readonly Figure[] {
  const { usualV, papersV } = f.values('sense-level');
  const known = (valueV: number | undefined): valueV is number => valueV !== undefined && Number.isFinite(valueV);
  const oneWattV = levelV({ powerW: 1, loadOhm: estimate(f.rig, 'frontRatedOhm').value });
  const gainDb = -estimate(f.rig, 'loweredByDb').value;
  return [
    ...(known(usualV)
      ? ([{ id: 'hears', label: 'At its inputs at your usual volume, as read', value: usualV, unit: 'V' }] as const)
      : []),
    known(papersV)
      ? { id: 'wakes-by-sound', label: 'It wakes above, by its papers', value: papersV, unit: 'V' }
      : WAKES_BY_SOUND_ABOVE,
    { id: 'one-watt-full', label: 'One watt at the head unit, full level', value: oneWattV, unit: 'V' },
    {
      id: 'one-watt-lowered',
      label: 'The same volume step with an amplified profile',
      value: oneWattV * voltageRatio({ gainDb }),
      unit: 'V',
    },
  ];
}
