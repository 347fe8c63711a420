import { levelV } from './level.ts';
import { requireNotNegative, requirePositive, requireWithin } from './require.ts';

/**
 * The share of an amplifier's rated power that a cautious setting uses: 75 of 90 W. Common practice, no published
 * source.
 */
export const GAIN_MARGIN_RATIO = 5 / 6;

type Target = { powerW: number; loadOhm: number; marginRatio?: number };

/**
 * The AC volts at an amplifier's output at which its gain is right: U = √(margin × P × Z).
 *
 * Source: Joule's law, see `levelV`; to set the gain by it is common practice, no published source.
 * Valid: for a sine, at the head unit's top clean step, speakers unplugged. With music no meter shows this value, and a
 * clipped sine reads right long before it is right. `powerW` and `loadOhm` belong together: the power the amplifier is
 * rated for at these ohms.
 * @throws {RangeError} if the power or the load is not finite and above 0, or the margin is not from 0 to 1.
 */
export function gainTargetV({ powerW, loadOhm, marginRatio = 1 }: Target): number {
  requirePositive({ powerW, loadOhm, marginRatio });
  requireWithin({ marginRatio }, 0, 1);
  return levelV({ powerW: marginRatio * powerW, loadOhm });
}

/**
 * Voltage gain of an amplifier: output / input.
 *
 * Source: the definition. Valid: both readings taken with the same tone and the same meter, so that its roll-off
 * cancels, and below clipping: a clipped output makes the gain look too small.
 * @throws {RangeError} if the output is negative, the input is not above 0, or either is not finite.
 */
export function gainRatio({ outputV, inputV }: { outputV: number; inputV: number }): number {
  requireNotNegative({ outputV });
  requirePositive({ inputV });
  return outputV / inputV;
}
