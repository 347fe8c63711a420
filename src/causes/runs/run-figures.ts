import { coilBandOhm } from '../../compute/impedance.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { CLEAR_OF_FRAME_OHM, JOINTS_HEALTHY_OHM, TOUCHES_FRAME_OHM } from '../../compute/signal-path.ts';
import { copperResistanceOhm } from '../../compute/wire.ts';
import { estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { ProofOfCure } from '../cause.ts';
import type { Figure } from '../figure.ts';
import type { Where } from '../repair-action.ts';
import { isFront, silentOrRear } from '../where.ts';

/** What a speaker run reads in ohms: healthy on this bike, and as it was read. */

export const ratedField = (where: Where) => (isFront(where) ? 'frontRatedOhm' : 'rearRatedOhm');

export function coilFigure({ rig }: Findings, where: Where = 'rear'): Figure {
  const axles = where === 'all' ? (['front', 'rear'] as const) : [where];
  const rated = axles.map((axle) => estimate(rig, ratedField(axle)));
  const least = Math.min(...rated.map(({ low }) => low));
  const most = Math.max(...rated.map(({ high }) => high));
  const { lowOhm } = coilBandOhm({ ratedOhm: least });
  const { highOhm } = coilBandOhm({ ratedOhm: most });
  // A band of several ratings is none that a good coil of one of them has to lie in.
  const coil =
    least === most ? `One coil of ${formatQuantity(most, 'Ω')}` : `One coil, of ${formatRange(least, most, 'Ω')} rated`;
  return { id: 'coil-cold', label: `${coil}, cold, without your leads`, value: [lowOhm, highOhm], unit: 'Ω' };
}

function wiresFigure({ rig }: Findings): Figure {
  const lengthM = 2 * estimate(rig, 'rearRunM').value;
  const value = copperResistanceOhm({ lengthM, sectionM2: estimate(rig, 'rearRunM2').value });
  return { id: 'run-wires', label: 'Both wires of the run', value, unit: 'Ω' };
}

/** The two runs of an axle as they were read, without the leads of the meter. An open one has no figure. */
function runsRead(f: Findings, where: Where): readonly Figure[] {
  const values = f.values(isFront(where) ? 'run-ohms@front' : 'run-ohms');
  const { leadsOhm = 0 } = values;
  return (['left', 'right'] as const).flatMap((side): readonly Figure[] => {
    const readOhm = values[`${side}Ohm`];
    if (readOhm === undefined || !Number.isFinite(readOhm - leadsOhm)) return [];
    const label = `${isFront(where) ? 'Front' : 'Rear'} ${side} run, as read, less your leads`;
    return [{ id: `run-${side}Ohm`, label, value: Math.max(0, readOhm - leadsOhm), unit: 'Ω' }];
  });
}

/** A run on this bike: what was read, and what its coil and its wires have. Nobody knows how long a front one is. */
export const runFigures = (f: Findings, where = silentOrRear(f)): readonly Figure[] => [
  ...runsRead(f, where),
  coilFigure(f, where),
  ...(where.startsWith('rear') ? [wiresFigure(f)] : []),
];

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
  const lowestOhm =
    f.values('wire-to-frame')['lowestOhm'] ??
    f.values('wire-to-frame@front')['lowestOhm'] ??
    f.values('amp-wires-to-frame')['lowestOhm'];
  return lowestOhm === undefined || !Number.isFinite(lowestOhm)
    ? []
    : [{ id: 'wire-to-frame', label: 'Lowest to the frame, as read', value: lowestOhm, unit: 'Ω' }];
}

const OHMS = ['meter-on-ohms'] as const;

/** The check after a cure between an output and a coil. */
export const runWhole = (f: Findings, where = silentOrRear(f)): ProofOfCure => {
  const front = isFront(where);
  const moved = front ? 'the bars turn from lock to lock' : 'you move every lid';
  return {
    byEar: `It plays, and keeps playing while ${moved}, through a ride, and after key off and on.`,
    byMeter: `Key off, plug apart: the run reads its coil${front ? '' : ' plus its wires'}, within ${formatQuantity(JOINTS_HEALTHY_OHM, 'Ω')}, and holds still while ${moved}.`,
    needs: OHMS,
  };
};
