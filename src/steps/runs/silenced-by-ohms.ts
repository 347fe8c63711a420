import { coilBandOhm } from '../../compute/impedance.ts';
import type { Situation, Values } from '../step.ts';
import { lessLeads } from './ohms.ts';
import { ratedOhm } from './rated-ohm.ts';

/** A run needs nine times its coil in ohms on top of it before the ear calls it silent: 20 dB. */
const SILENCING_RATIO = 10;

/** Whether both runs have so many ohms that they explain a silent rear. */
export function silencedByOhms(values: Values, situation: Situation): boolean {
  const leastOhm = Math.min(lessLeads(values, 'leftOhm'), lessLeads(values, 'rightOhm'));
  return leastOhm >= SILENCING_RATIO * coilBandOhm({ ratedOhm: ratedOhm(situation).low }).lowOhm;
}
