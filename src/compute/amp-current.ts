import { requirePositive, requireWhole, requireWithin } from './require.ts';

/** Average power of music at the edge of clipping over full sine power. Source: 16 CFR 432.3(c), as a test convention. */
export const MUSIC_AVERAGE_RATIO = 1 / 8;

/** The same for dense, loud music. Source: 16 CFR 432 had one third before 1998 (63 FR 37238); for music, common practice. */
export const DENSE_MUSIC_AVERAGE_RATIO = 1 / 3;

type Amplifier = {
  powerW: number;
  channels: number;
  efficiencyRatio: number;
  supplyV: number;
  averageRatio: number;
};

/**
 * Average current an amplifier draws: I = average × channels × P / (efficiency × supply).
 *
 * Source: conservation of energy; one eighth and one third as at the two constants.
 * Valid: `powerW` is the full sine power of one channel. The efficiency is taken as the same at every level, which suits
 * a switching amplifier at 0.65 to 0.80 (from memory); a linear one falls to 0.28 at one eighth, so draws far more.
 * Bass peaks draw the full current (`averageRatio` 1): size leads and fuses by that. Idle current comes on top.
 * @throws {RangeError} if a value is not above 0, a ratio is above 1, or the channels are not a whole number up to 16.
 */
export function ampCurrentA({ powerW, channels, efficiencyRatio, supplyV, averageRatio }: Amplifier): number {
  requirePositive({ powerW, efficiencyRatio, supplyV, averageRatio });
  requireWithin({ efficiencyRatio, averageRatio }, 0, 1);
  requireWhole({ channels }, 1, 16);
  return (averageRatio * channels * powerW) / (efficiencyRatio * supplyV);
}
