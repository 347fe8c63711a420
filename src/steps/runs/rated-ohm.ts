import type { Axle } from '../../rig/corner.ts';
import { type Estimate, estimate } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';

type Range = { readonly low: number; readonly high: number };

/** The rated ohms of one speaker of this axle. */
export const speakerOhm = ({ rig }: Situation, axle: Axle): Estimate =>
  estimate(rig, axle === 'rear' ? 'rearRatedOhm' : 'frontRatedOhm');

/** The rated ohms that the wiring of this axle can make of what is known: the least and the most. */
export function ratedOhm(situation: Situation, axle: Axle): Range {
  const { low, high } = speakerOhm(situation, axle);
  // Nobody is asked how many speakers hang on a front channel: it is taken as one.
  if (axle === 'front') return { low, high };
  const { rig } = situation;
  const { rearPerChannel: counted, rearWiring: wiring } = rig;
  if (wiring === 'single') return { low, high };
  // Side by side or in a row there are at least two. Known to be several, but not how: anything from one to the other.
  if (wiring === 'parallel') return { low: low / (counted ?? 2), high: high / (counted ?? 2) };
  if (wiring === 'series') return { low: low * (counted ?? 2), high: high * (counted ?? 2) };
  if (counted !== undefined) return { low: low / counted, high: high * counted };
  return { low: low / estimate(rig, 'rearPerChannel').high, high };
}
