import { dropV } from '../../compute/wire.ts';
import { numberIn } from '../outcome.ts';
import type { Situation } from '../step.ts';
import { BATTERY_OHM, healthyPathOhm, LAMP_A } from './amp-feed.ts';
import { ampTerminals } from './amp-terminals.ts';
import { type Drop, LAST_DIGIT_V } from './drops.ts';
import { supplyUnderLoad } from './supply-under-load.ts';

/** What the battery itself loses when the lamp is on, in volts; undefined where it was not read with and without. */
export function lostInBatteryV({ facts }: Situation): number | undefined {
  const restV = numberIn(facts[ampTerminals.id], 'batteryV', 'V');
  const loadedV = numberIn(facts[supplyUnderLoad.id], 'batteryV', 'V');
  return restV === undefined || loadedV === undefined ? undefined : restV - loadedV;
}

/** A sound battery falls by so much between two readings, by the lamp and by the minutes with the key on. From memory. */
const BATTERY_FALLS_V = 0.2;

/** The part of the supply that loses the most over a sound one with the lamp on; null where all are sound. */
export function weakestPart(situation: Situation): 'battery' | 'plus' | 'ground' | null {
  const read = (drop: Drop) => numberIn(situation.facts[supplyUnderLoad.id], drop, 'V') ?? 0;
  const { plusOhm, groundOhm } = healthyPathOhm(situation);
  const over = (lostV: number, resistanceOhm: number) => lostV - dropV({ currentA: LAMP_A, resistanceOhm });
  const batteryLostV = lostInBatteryV(situation) ?? 0;
  const excessV = {
    plus: over(read('plusDropV'), plusOhm),
    ground: over(read('groundDropV'), groundOhm),
    battery: batteryLostV < BATTERY_FALLS_V ? 0 : over(batteryLostV, BATTERY_OHM),
  };
  const parts = Object.keys(excessV) as (keyof typeof excessV)[];
  const [worst] = parts.toSorted((a, b) => excessV[b] - excessV[a]);
  return worst && excessV[worst] > LAST_DIGIT_V ? worst : null;
}
