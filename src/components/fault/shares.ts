/** Of how many one is, in the round numbers that people say. */
const ONE_IN = [10, 15, 20, 30, 50, 100] as const;
/** Below this, even one in a hundred says too much. */
const LEAST_SHARE = 0.008;
/** From here up, tenths say less than there is. */
const NEARLY_ALL = 0.95;

/** A share in the words that people use for odds. */
export function shareInWords(shareRatio: number): string {
  if (shareRatio >= NEARLY_ALL) return 'more than 9 in 10';
  const tenths = Math.round(10 * shareRatio);
  if (tenths > 1) return `about ${tenths} in 10`;
  if (shareRatio < LEAST_SHARE) return 'less than 1 in 100';
  const away = (n: number) => Math.abs(Math.log(n * shareRatio));
  return `about 1 in ${ONE_IN.reduce((best, n) => (away(n) < away(best) ? n : best))}`;
}
