/**
 * How many slips of the finger lie between two words: a letter too many, one missing, a wrong one, or two neighbours the
 * wrong way round, each one slip. Optimal string alignment (Boytsov, Indexing methods for approximate dictionary
 * searching, 2011, section 2.2).
 */
export function slipsBetween(a: string, b: string): number {
  const width = b.length + 1;
  // The whole table in one array: a row for each letter of the one, a column for each of the other.
  const slips = new Uint8Array((a.length + 1) * width);
  for (let j = 0; j < width; j++) slips[j] = j;
  for (let i = 1; i <= a.length; i++) {
    const row = i * width;
    slips[row] = i;
    for (let j = 1; j < width; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      const above = row - width + j;
      let least = Math.min((slips[above] ?? 0) + 1, (slips[row + j - 1] ?? 0) + 1, (slips[above - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (slips[above - width - 2] ?? 0) + 1);
      slips[row + j] = least;
    }
  }
  return slips[slips.length - 1] ?? 0;
}
