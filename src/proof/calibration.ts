import { elsewhere } from '../../machines/elsewhere.ts';
import type { HandsOver } from '../../machines/machine.ts';
import type { Share } from '../inference/posterior.ts';
import { isUnthought } from '../inference/table.ts';

/** Who led when a verdict was reached, with what share, and whether it was that. */
export interface Lead {
  readonly shareRatio: number;
  readonly right: boolean;
}

/**
 * The likeliest cause with a name, and its share of those with a name: on the bikes that this is counted on it is always one
 * of them. One that stands for another flow is right if the bike has any that is looked for there.
 */
export function leadOf(
  shares: readonly Share[],
  right: ReadonlySet<string>,
  handsOver: readonly HandsOver[],
): Lead | undefined {
  const named = shares.filter(({ cause }) => !isUnthought(cause));
  const [first] = named;
  const total = named.reduce((sum, { shareRatio }) => sum + shareRatio, 0);
  if (!first || total <= 0) return undefined;
  const others = handsOver.find((to) => elsewhere(to.flow) === first.cause)?.causes ?? [];
  return {
    shareRatio: first.shareRatio / total,
    right: right.has(first.cause) || others.some((cause) => right.has(cause)),
  };
}

/** Where the bins of shares begin. Finer towards the end: what is said of a verdict hangs on it there. */
const BEGIN: readonly number[] = [0, 0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98];

/** By where a bin begins: verdicts in it, those that were right, and the sum of their shares. */
export type Bins = Readonly<Record<string, readonly [verdicts: number, right: number, shares: number]>>;

export function addBins(a: Bins, b: Bins): Bins {
  const sum = (begin: string, i: 0 | 1 | 2) => (a[begin]?.[i] ?? 0) + (b[begin]?.[i] ?? 0);
  const all = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return Object.fromEntries(all.map((begin) => [begin, [sum(begin, 0), sum(begin, 1), sum(begin, 2)] as const]));
}

export const binsOf = (leads: readonly Lead[]): Bins =>
  leads
    .map(({ shareRatio, right }): Bins => {
      const begin = BEGIN.findLast((one) => shareRatio >= one) ?? 0;
      return { [begin]: [1, right ? 1 : 0, shareRatio] };
    })
    .reduce(addBins, {});

/** 97.5 % of a normal distribution lie below so many standard deviations. */
const Z = 1.959964;

/**
 * The interval that holds the true rate of something seen `hits` times in `tries`, in 95 of 100 cases.
 *
 * Source: E. B. Wilson, "Probable inference, the law of succession, and statistical inference", Journal of the American
 * Statistical Association 22 (1927).
 */
export function wilson(hits: number, tries: number): readonly [low: number, high: number] {
  if (tries === 0) return [0, 1];
  const rate = hits / tries;
  const spread = Z ** 2 / tries;
  const middle = (rate + spread / 2) / (1 + spread);
  const half = (Z * Math.sqrt((rate * (1 - rate)) / tries + spread / (4 * tries))) / (1 + spread);
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}

/** A bin as it is shown: the share that was said, how often it was right, and whether that may be chance. */
export interface Bin {
  readonly begin: number;
  readonly verdicts: number;
  readonly saidRatio: number;
  readonly rightRatio: number;
  readonly low: number;
  readonly high: number;
  readonly within: boolean;
}

export const calibration = (bins: Bins): readonly Bin[] =>
  Object.entries(bins)
    .map(([begin, [verdicts, right, shares]]): Bin => {
      const [low, high] = wilson(right, verdicts);
      const saidRatio = shares / verdicts;
      const within = saidRatio >= low && saidRatio <= high;
      return { begin: Number(begin), verdicts, saidRatio, rightRatio: right / verdicts, low, high, within };
    })
    .toSorted((a, b) => a.begin - b.begin);

const percent = (ratio: number): string => (100 * ratio).toFixed(1).padStart(5);

/** The bins for people, one line each. */
export const calibrationTable = (bins: Bins): string =>
  [
    '  said from  verdicts   said  right  may be',
    ...calibration(bins).map(
      ({ begin, verdicts, saidRatio, rightRatio, low, high, within }) =>
        `      ${percent(begin)} ${String(verdicts).padStart(9)}  ${percent(saidRatio)}  ${percent(rightRatio)}  ${percent(low)} to ${percent(high)}${within ? '' : '  outside'}`,
    ),
  ].join('\n');
