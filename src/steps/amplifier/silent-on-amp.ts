import type { Axle } from '../../rig/corner.ts';
import { type Findings, is } from '../outcome.ts';
import { concernsAxle } from '../told/silent-side.ts';

/** Whether an amplifier drives the silent speaker of this axle, or may. */
export const mayBeOnAmp = (f: Findings, axle: Axle): boolean =>
  concernsAxle(f, axle) && !is(f, axle === 'rear' ? 'rear-drive' : 'front-fed', 'unit', 'cannot');

/** Whether an amplifier drives any silent speaker, or may. */
export const silentMayBeOnAmp = (f: Findings): boolean => mayBeOnAmp(f, 'rear') || mayBeOnAmp(f, 'front');
