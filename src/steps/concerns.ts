import type { Rig } from '../rig/rig.ts';
import type { CautionId } from './cautions.ts';

/** They speak of an amplifier. */
const OF_AN_AMP: readonly CautionId[] = [
  'amp-output',
  'back-to-full',
  'capacitors',
  'cranking',
  'ground-open',
  'jumper',
  'live-clip',
  'set-gain-again',
  'temporary-lead',
  'wakes-loud',
];

/** Whether a caution has anything to say on a bike. What nobody knows of it may be there. */
export function concerns(id: CautionId, { amps, batteryKind }: Rig): boolean {
  if (amps?.length === 0 && OF_AN_AMP.includes(id)) return false;
  // A factory amplifier mostly has no knob to turn.
  if (id === 'set-gain-again') return amps === undefined || amps.some(({ kind }) => kind !== 'factory');
  if (id === 'ground-open') return amps === undefined || amps.some(({ input }) => input !== 'speaker');
  if (id === 'acid') return batteryKind !== 'lithium';
  return !(id === 'own-charger' && batteryKind === 'lead');
}

/** Those of them that concern this bike, each once. */
export const onThisBike = (ids: readonly CautionId[], rig: Rig): readonly CautionId[] =>
  [...new Set(ids)].filter((id) => concerns(id, rig));
