/**
 * What the causes of a complaint show. A row is a cause on one kind of build: how often callers have it, on how many bikes
 * it was looked at, and how often each step gave each of its outcomes. A step that a row does not name was never looked at.
 */
export interface Table {
  /** By step, its outcomes, in the order of the shares in the rows. */
  readonly steps: Readonly<Record<string, readonly string[]>>;
  readonly rows: readonly Row[];
}

export interface Row {
  readonly cause: string;
  readonly weight: number;
  readonly looks: number;
  /** By step, the share of each of its outcomes. */
  readonly shows: Readonly<Record<string, readonly number[]>>;
}

/**
 * Two rows for whatever nobody thought of: one shows what a bike shows on which everything that can be read is sound, the
 * other shows outcomes as often as bikes of this complaint do at all.
 */
export const UNTHOUGHT_SOUND = 'unthought-sound';
export const UNTHOUGHT_ODD = 'unthought-odd';
export const isUnthought = (cause: string): boolean => cause === UNTHOUGHT_SOUND || cause === UNTHOUGHT_ODD;
/** How often it is each of them. Judged, not measured: no list of causes is ever whole. */
const UNTHOUGHT_SHARE = 0.03;

/** Whatever nobody thought of leaves most of a bike as it is: so much of what it shows is what a sound bike shows. Judged. */
const SOUND_PART = 0.5;

/**
 * How many looks at an average bike are mixed into what is known of a cause, and how many at an average bike with that
 * cause into each of its rows: what was never seen is unlikely and not impossible, and a kind of build of which few were
 * looked at shows mostly what the cause shows on all others.
 */
const SMOOTHING_LOOKS = { cause: 1, row: 3 };
const mixed = (own: number, looks: number, mean: number, smoothingLooks: number): number =>
  (looks * own + smoothingLooks * mean) / (looks + smoothingLooks);

/** The chances of one step: by outcome, then by row. */
export interface Chances {
  readonly outcomes: ReadonlyMap<string, number>;
  readonly byRow: readonly Float64Array[];
  /** How often the step gives each outcome over all causes. */
  readonly general: readonly number[];
  /** What a slip at this step looks like. */
  readonly slip: readonly number[];
  /** The causes with which it was ever looked at. With the others it makes no sense, and their chances are the mean. */
  readonly looked: ReadonlySet<string>;
}

/** A table made ready: shares filled, smoothed and in columns. */
export interface Model {
  readonly causes: readonly string[];
  /** The cause of each row, by its place in `causes`. */
  readonly causeOf: readonly number[];
  readonly prior: Float64Array;
  readonly steps: Pick<ReadonlyMap<string, Chances>, 'get' | 'has'>;
}
/** One that was made of a table, with the chances of every step at hand. */
export interface Compiled extends Model {
  readonly steps: ReadonlyMap<string, Chances>;
}

/** Without the rows of some causes, as if nobody had thought of them. */
export const withoutCauses = (table: Table, left: readonly string[]): Table => ({
  ...table,
  rows: table.rows.filter(({ cause }) => !left.includes(cause)),
});

function generalOf(rows: readonly Row[], step: string, outcomes: number): readonly number[] {
  const sums = new Array<number>(outcomes).fill(0);
  let total = 0;
  for (const { weight, shows } of rows) {
    const own = shows[step];
    if (!own) continue;
    total += weight;
    for (let o = 0; o < outcomes; o++) sums[o] = (sums[o] as number) + weight * (own[o] ?? 0);
  }
  return total === 0 ? sums.fill(1 / outcomes) : sums.map((sum) => sum / total);
}

/** What each cause shows at a step, over all its rows, and on how many bikes that was looked at. */
function generalByCause(rows: readonly Row[], step: string, outcomes: number) {
  const looked = Map.groupBy(
    rows.filter(({ shows }) => shows[step]),
    ({ cause }) => cause,
  );
  return new Map(
    [...looked].map(([cause, own]) => {
      const looks = own.reduce((sum, row) => sum + row.looks, 0);
      return [cause, { looks, shares: generalOf(own, step, outcomes) }] as const;
    }),
  );
}

const made = new WeakMap<Table, Compiled>();

/**
 * Makes a table ready for use. What a row was never looked at for is filled with the mean over all causes, so that the
 * order of answers cannot matter; every share is smoothed towards what its cause shows on all bikes, and that towards the
 * mean: P = (n·p + α·c) / (n + α) and c = (N·q + β·m) / (N + β), with n looks of the row, N of its cause, α and β of
 * `SMOOTHING_LOOKS`, q what the cause shows and m the mean.
 */
export function compile(table: Table): Compiled {
  const known = made.get(table);
  if (known) return known;
  const listed = table.rows.filter(({ cause }) => !isUnthought(cause));
  const total = listed.reduce((sum, { weight }) => sum + weight, 0);
  const sound = table.rows.filter(({ cause }) => cause === UNTHOUGHT_SOUND);
  const soundTotal = sound.reduce((sum, { weight }) => sum + weight, 0) || 1;
  const rows: readonly Row[] = [
    ...listed,
    ...sound.map((row) => ({ ...row, weight: (UNTHOUGHT_SHARE * total * row.weight) / soundTotal })),
    { cause: UNTHOUGHT_ODD, weight: UNTHOUGHT_SHARE * total, looks: 1, shows: {} },
  ];
  const causes = [...new Set(rows.map(({ cause }) => cause))];
  const all = rows.reduce((sum, { weight }) => sum + weight, 0);
  const steps = new Map<string, Chances>();
  for (const [step, names] of Object.entries(table.steps)) {
    const general = generalOf(listed, step, names.length);
    const soundly = sound.length > 0 ? generalOf(sound, step, names.length) : general;
    const byCause = generalByCause(rows, step, names.length);
    const byRow = names.map((_, o) =>
      Float64Array.from(rows, ({ cause, shows, looks }) => {
        const own = shows[step];
        const all = byCause.get(cause);
        const mean = general[o] as number;
        if (cause === UNTHOUGHT_ODD) return SOUND_PART * (soundly[o] as number) + (1 - SOUND_PART) * mean;
        if (!own || !all) return mean;
        const ofCause = mixed(all.shares[o] as number, all.looks, mean, SMOOTHING_LOOKS.cause);
        return mixed(own[o] ?? 0, looks, ofCause, SMOOTHING_LOOKS.row);
      }),
    );
    const outcomes = new Map(names.map((name, o) => [name, o]));
    steps.set(step, {
      outcomes,
      byRow,
      general,
      slip: names.map(() => 1 / names.length),
      looked: new Set(byCause.keys()),
    });
  }
  const model: Compiled = {
    causes,
    causeOf: rows.map(({ cause }) => causes.indexOf(cause)),
    prior: Float64Array.from(rows, ({ weight }) => weight / all),
    steps,
  };
  made.set(table, model);
  return model;
}
