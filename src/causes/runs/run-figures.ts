import { coilBandOhm } from '../../compute/impedance.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { CLEAR_OF_FRAME_OHM, JOINTS_HEALTHY_OHM, TOUCHES_FRAME_OHM } from '../../compute/signal-path.ts';
import { copperResistanceOhm } from '../../compute/wire.ts';
import { estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { ProofOfCure } from '../cause.ts';
import type { Figure } from '../figure.ts';
import type { Where } from '../repair-action.ts';

/** What a speaker run reads in ohms: healthy on this bike, and as it was read. */

const isFront = (where: Where): boolean => where.startsWith('front');
export const ratedField = (where: Where) => (isFront(where) ? 'frontRatedOhm' : 'rearRatedOhm');

export function coilFigure({ rig }: Findings, where: Where = 'rear'): Figure {
  const rated = estimate(rig, ratedField(where));
  const { lowOhm } = coilBandOhm({ ratedOhm: rated.low });
  const { highOhm } = coilBandOhm({ ratedOhm: rated.high });
  return { id: 'coil-cold', label: 'One coil, cold', value: [lowOhm, highOhm], unit: 'Ω' };
}

function wiresFigure({ rig }: Findings): Figure {
  const lengthM = 2 * estimate(rig, 'rearRunM').value;
  const value = copperResistanceOhm({ lengthM, sectionM2: estimate(rig, 'rearRunM2').value });
  return { id: 'run-wires', label: 'Both wires of the run', value, unit: 'Ω' };
}

const READ = { leftOhm: 'Rear left run', rightOhm: 'Rear right run' } as const;

/** The two rear runs as they were read, without the leads of the meter. An open one has no figure. */
function rearRunsRead(f: Findings): readonly Figure[] {
  const values = f.values('run-ohms');
  const { leadsOhm = 0 } = values;
  return (['leftOhm', 'rightOhm'] as const).flatMap((reading): readonly Figure[] => {
    const readOhm = values[reading];
    if (readOhm === undefined || !Number.isFinite(readOhm - leadsOhm)) return [];
    const label = `${READ[reading]}, as read, less your leads`;
    return [{ id: `run-${reading}`, label, value: Math.max(0, readOhm - leadsOhm), unit: 'Ω' }];
  });
}

/** A rear run on this bike: what was read, and what its coil and its wires have. */
export const rearRunFigures = (f: Findings): readonly Figure[] => [...rearRunsRead(f), coilFigure(f), wiresFigure(f)];

/** The lowest run of the amplifier in question, as it was read. */
export function lowestRunRead(f: Findings): readonly Figure[] {
  const { lowestOhm, leadsOhm = 0 } = f.values('amp-runs');
  if (lowestOhm === undefined || !Number.isFinite(lowestOhm - leadsOhm)) return [];
  const value = Math.max(0, lowestOhm - leadsOhm);
  return [{ id: 'lowest-run', label: 'Its lowest run, as read, less your leads', value, unit: 'Ω' }];
}

export const CLEAR_OF_FRAME: Figure = {
  id: 'wire-to-frame-healthy',
  label: 'Speaker wire to the frame, healthy',
  value: CLEAR_OF_FRAME_OHM,
  unit: 'Ω',
  limit: 'above',
};
export const TOUCHES_FRAME: Figure = {
  id: 'wire-to-frame-touching',
  label: 'Speaker wire to the frame, touching',
  value: TOUCHES_FRAME_OHM,
  unit: 'Ω',
  limit: 'below',
};

/** The lowest wire to the frame, as it was read in either flow. */
export function lowestToFrameRead(f: Findings): readonly Figure[] {
  const lowestOhm = f.values('wire-to-frame')['lowestOhm'] ?? f.values('amp-wires-to-frame')['lowestOhm'];
  return lowestOhm === undefined || !Number.isFinite(lowestOhm)
    ? []
    : [{ id: 'wire-to-frame', label: 'Lowest to the frame, as read', value: lowestOhm, unit: 'Ω' }];
}

/** The check after a cure between an output and a coil. */
export const RUN_WHOLE: ProofOfCure = {
  byEar: 'It plays, and stays while you move every lid, through a ride, and after key off and on.',
  byMeter: `Key off, plug apart: the run reads its coil plus its wires, within ${formatQuantity(JOINTS_HEALTHY_OHM, 'Ω')}, and holds still while the lid moves.`,
  needs: ['meter-on-ohms'],
};
