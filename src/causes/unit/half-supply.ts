import { HALF_SUPPLY_PAIR_DIFFERENCE_V, halfSupplyBandV } from '../../compute/half-supply.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import type { Findings } from '../../steps/outcome.ts';
import { type Figure, figureText } from '../figure.ts';

/** The DC that rests on the speaker wires of a head unit that is on. */

/** The battery as it was read last, else as the bike has it with the engine off. */
function supplyV(f: Findings): number {
  const read = [f.values('half-supply')['batteryV'], f.values('amp-terminals')['batteryV']];
  const usable = read.find((valueV) => valueV !== undefined && Number.isFinite(valueV) && valueV > 0);
  return usable ?? estimate(f.rig, 'supplyOffV').value;
}

export function halfSupplyHealthy(f: Findings): Figure {
  const { lowV, highV } = halfSupplyBandV({ supplyV: supplyV(f) });
  return { id: 'half-supply-healthy', label: 'DC on each speaker wire, healthy', value: [lowV, highV], unit: 'V' };
}

export const PAIR_DIFFERENCE_HEALTHY: Figure = {
  id: 'pair-difference-healthy',
  label: 'Between the two wires of a pair, healthy',
  value: HALF_SUPPLY_PAIR_DIFFERENCE_V,
  unit: 'V',
  limit: 'at most',
};

/** What was read on the two wires of a rear input pair, or on those of an amplifier that waits for DC. */
export function pairDcRead(f: Findings): readonly Figure[] {
  const read = f.values('half-supply')['plusV'] === undefined ? f.values('sense-dc') : f.values('half-supply');
  const { plusV, minusV } = read;
  if (plusV === undefined || minusV === undefined || !Number.isFinite(plusV) || !Number.isFinite(minusV)) return [];
  return [
    { id: 'one-wire-dc', label: 'DC on one wire, as read', value: plusV, unit: 'V' },
    { id: 'other-wire-dc', label: 'DC on the other, as read', value: minusV, unit: 'V' },
  ];
}

/** The check of a live pair, with the volts of this bike. */
export const pairRestsAlike = (f: Findings): string =>
  `Head unit on, music paused, black probe on battery negative: ${figureText(halfSupplyHealthy(f))} on each wire, the two wires of a pair within ${formatQuantity(HALF_SUPPLY_PAIR_DIFFERENCE_V, 'V')} of each other.`;
