import { KEY_ON_HEALTHY_V } from '../../compute/amp-supply.ts';
import { dropV } from '../../compute/wire.ts';
import type { Band, Situation, Values } from '../step.ts';
import { cuttingOutOhm, healthyPathOhm, LAMP_A } from './amp-feed.ts';

/** So little over a sound lead is the last digit of a meter, and no wear. */
export const LAST_DIGIT_V = 0.02;

/** What positive and ground may lose together at the current of the lamp, before the amplifier goes off on full bass. */
export const cuttingOutV = (supplyV: number, situation: Situation): number =>
  dropV({ currentA: LAMP_A, resistanceOhm: cuttingOutOhm(situation, supplyV) });

const DROPS = { plusDropV: 'plusOhm', groundDropV: 'groundOhm' } as const;

export type Drop = keyof typeof DROPS;

export const isDrop = (reading: string): reading is Drop => Object.hasOwn(DROPS, reading);

/** The most that a healthy path loses at the current of the lamp. */
export const healthyDropV = (drop: Drop, situation: Situation): number =>
  dropV({ currentA: LAMP_A, resistanceOhm: healthyPathOhm(situation)[DROPS[drop]] }) + LAST_DIGIT_V;

/** The drops at which a path is healthy, and at which it cuts the amplifier off, at the current of the lamp. */
export function bandsOfDrop(drop: Drop, values: Values, situation: Situation): readonly Band[] {
  const supplyV = values['batteryV'] ?? KEY_ON_HEALTHY_V;
  const healthyV = healthyDropV(drop, situation);
  const cutsOutV = Math.max(1.5 * healthyV, cuttingOutV(supplyV, situation));
  return [
    { label: 'healthy', low: -0.5, high: healthyV, mood: 'good' },
    { label: 'more than healthy', low: healthyV, high: cutsOutV, mood: 'unsure' },
    { label: 'cuts the amplifier off', low: cutsOutV, high: 3 * cutsOutV, mood: 'bad' },
  ];
}
