import { type Posterior, SLIPS, type Slips } from './posterior.ts';
import type { Model } from './table.ts';

const bitsOf = (share: number): number => (share > 0 ? -share * Math.log2(share) : 0);

/** The uncertainty of shares that add up to one, in bits: H = −Σ p·log₂ p. */
export function entropyBits(shares: Iterable<number>): number {
  let bits = 0;
  for (const share of shares) bits += bitsOf(share);
  return bits;
}

/**
 * The bits that the answer to a step is expected to take off the uncertainty about the cause: H − Σ p(o)·H(o), over its
 * outcomes. Source: expected information of an experiment, MacKay, Information Theory, Inference, and Learning Algorithms,
 * ch. 4 (published by Cambridge University Press, 2003).
 */
export function expectedBits(model: Model, { rows, causes }: Posterior, step: string, slips: Slips = SLIPS): number {
  const chances = model.steps.get(step);
  if (!chances) return 0;
  const { byRow, slip } = chances;
  // As an answer counts that is the only one under its condition.
  const right = (1 - slips.alone) * (1 - slips.together);
  const joint = new Float64Array(causes.length);
  let left = 0;
  for (let o = 0; o < byRow.length; o++) {
    const own = byRow[o] as Float64Array;
    const byChance = (1 - right) * (slip[o] as number);
    joint.fill(0);
    let total = 0;
    for (let r = 0; r < rows.length; r++) {
      const share = (rows[r] as number) * (right * (own[r] as number) + byChance);
      const c = model.causeOf[r] as number;
      joint[c] = (joint[c] as number) + share;
      total += share;
    }
    // Σ −j·log₂(j/t) = Σ −j·log₂ j + t·log₂ t
    for (const share of joint) left += bitsOf(share);
    left -= bitsOf(total);
  }
  return Math.max(0, entropyBits(causes) - left);
}
