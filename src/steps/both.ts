/** Of two outcomes the one that stands first: what is worse of two faults is what is met. */
export const firstOf =
  <O extends string>(...order: readonly O[]) =>
  (one: O, other: O): O =>
    order.find((outcome) => outcome === one || outcome === other) ?? one;

/** Setting right what was wrong of it cures by itself, or shows that it was one of two. */
export const fixedOne = <O extends string>(one: O | 'cured' | 'was-up', other: O | 'cured' | 'was-up') =>
  one === other ? one : ('was-up' as const);
