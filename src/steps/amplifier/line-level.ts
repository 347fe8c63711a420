import { ampDriving } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';

/** Whether something stands between the head unit and the amplifier that makes another level of it. */
export const onLineLevel = ({ rig }: Situation) => ampDriving(rig, 'rear')?.input === 'line';

/** An amplifier on a line-level lead makes more of it, whatever the converter gives. */
export const LEAST_LINE_GAIN = 1;
