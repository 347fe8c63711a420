import { powerRatio } from '../../compute/decibel.ts';
import { boostClipsAtV, headroomLostDb } from '../../compute/headroom.ts';
import { powerW } from '../../compute/level.ts';
import { fullLevel, loadOhmOf, unloadedFullV } from '../../rig/levels.ts';
import { estimate } from '../../rig/rig.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { type Figure, voltsRead } from '../figure.ts';

/** How far a head unit can be turned up: its highest clean volts, and what a boost leaves of them. */

const onAmp = (f: Findings): boolean => f.rig.frontFedBy === 'amp';

/** The loudest clean sine of a front pair, engine running: into a speaker, or into an amplifier that draws nothing. */
export const highestCleanV = (f: Findings): number =>
  onAmp(f) ? unloadedFullV(f.rig) : fullLevel(f.rig, 'front').levelV;

export function cleanFigures(f: Findings): readonly Figure[] {
  const cleanV = highestCleanV(f);
  return [
    { id: 'highest-clean', label: 'Highest clean output of a front pair, engine running', value: cleanV, unit: 'V' },
    ...(onAmp(f)
      ? []
      : [
          {
            id: 'highest-clean-power',
            label: 'Into the front speaker that is',
            value: fullLevel(f.rig, 'front').powerW,
            unit: 'W',
          } as const,
        ]),
  ];
}

/** Whether the boost of an unaltered profile is in it, as far as anybody knows. */
const mayBeBoosted = (f: Findings): boolean => f.rig.unitKind !== 'replaced' && !is(f, 'tones-off', 'flat', 'cut');

/** What a boost costs: the decibels, the level at which the bass is at the limit, and the watts of all the rest there. */
export function boostFigures(f: Findings): readonly Figure[] {
  if (!mayBeBoosted(f)) return [];
  const boostDb = estimate(f.rig, 'boostDb').value;
  const cleanV = highestCleanV(f);
  const voicesV = boostClipsAtV({ cleanV, boostDb });
  const loadOhm = loadOhmOf(f.rig, 'front');
  return [
    { id: 'headroom-lost', label: 'The bass boost costs headroom', value: headroomLostDb({ boostDb }), unit: 'dB' },
    { id: 'voices-at-limit', label: 'Voices are at this when the bass begins to clip', value: voicesV, unit: 'V' },
    ...(onAmp(f)
      ? []
      : [
          {
            id: 'voices-power',
            label: 'Into the front speaker that is',
            value: powerW({ levelV: voicesV, loadOhm }),
            unit: 'W',
          } as const,
        ]),
    {
      id: 'boost-power',
      label: 'Share of the clean power left for voices',
      value: 100 * powerRatio({ gainDb: -headroomLostDb({ boostDb }) }),
      unit: '%',
    },
  ];
}

/** What was read at the step at which it is ugly. */
export function readAtTop(f: Findings): readonly Figure[] {
  const { v80V, v400V } = f.values('unit-at-top');
  return [
    ...voltsRead('read-80', 'At that step, 80 Hz, as read', v80V),
    ...voltsRead('read-400', 'At that step, 400 Hz, as read', v400V),
  ];
}
