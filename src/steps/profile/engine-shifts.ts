import { valuesIn } from '../outcome.ts';
import type { ReadingStep, Situation, Values } from '../step.ts';
import { smallestDigitV } from '../tools/smallest-digit.ts';
import { tonesOff } from './tones-off.ts';

export const OTHER_TONES = ['v80V', 'v1000V', 'v4000V'] as const;

/** How much each tone, over 400 Hz, moves when the engine runs, with what the meter's last digit leaves possible. */
export function engineShifts(running: Values, situation: Situation) {
  const off = valuesIn(situation.facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  const digitV = smallestDigitV(situation.facts);
  return OTHER_TONES.flatMap((name) => {
    const readings = [running[name], off['v400V'], running['v400V'], off[name]];
    if (!readings.every((valueV) => valueV !== undefined && valueV > digitV)) return [];
    const [up1 = 1, up2 = 1, down1 = 1, down2 = 1] = readings as number[];
    const shift = (up1 * up2) / (down1 * down2);
    const spread = readings.reduce<number>((worst, valueV) => worst * (1 + digitV / (valueV ?? 1)), 1);
    return [{ tone: name, shiftRatio: shift, lowRatio: shift / spread, highRatio: shift * spread }];
  });
}
