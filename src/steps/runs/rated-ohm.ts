import { estimate } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';

/** The rated ohms that the wiring can make of what is known: the least and the most. */
export function ratedOhm({ rig }: Situation): { readonly low: number; readonly high: number } {
  const { low, high } = estimate(rig, 'rearRatedOhm');
  const { rearPerChannel: counted, rearWiring: wiring } = rig;
  if (wiring === 'single') return { low, high };
  // Side by side or in a row there are at least two. Known to be several, but not how: anything from one to the other.
  if (wiring === 'parallel') return { low: low / (counted ?? 2), high: high / (counted ?? 2) };
  if (wiring === 'series') return { low: low * (counted ?? 2), high: high * (counted ?? 2) };
  if (counted !== undefined) return { low: low / counted, high: high * counted };
  return { low: low / estimate(rig, 'rearPerChannel').high, high };
}
