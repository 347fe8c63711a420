import type { Row, Table } from '../inference/table.ts';

/**
 * A table as it is stored: small to fetch, and still text. Numbers are single characters (`DIGITS`). Shares are whole
 * hundredths. Many rows show the same at a step, so each step keeps its distinct shares once, and a row names them by
 * number. All rows of one step stand together, since they are alike.
 */
export interface PackedTable {
  readonly causes: readonly string[];
  /** Of each row, one after the other: its cause, weight in hundredths, and looks. */
  readonly rows: {
    readonly cause: string;
    readonly weight: readonly number[];
    readonly looks: readonly number[];
  };
  readonly steps: Readonly<Record<string, PackedStep>>;
}

export interface PackedStep {
  readonly outcomes: readonly string[];
  /** Each distinct way in which its outcomes are shared, one after the other. */
  readonly shares: string;
  /** Of each row, the number of its shares, counted from one; nought where the step was never looked at. */
  readonly rows: string;
}

const HUNDREDTHS = 100;

/** Characters that stand for numbers: what JSON writes as it is, the shortest in UTF-8 first. */
const FIRST_DIGIT = 0x23;
const BACKSLASH = 0x5c;
const PAST_ASCII = 0x7f;
const LATIN = 0xa1;
const ASCII_DIGITS = PAST_ASCII - FIRST_DIGIT - 1;
const digit = (n: number): string => {
  if (n >= ASCII_DIGITS) return String.fromCodePoint(LATIN + n - ASCII_DIGITS);
  const code = FIRST_DIGIT + n;
  return String.fromCodePoint(code < BACKSLASH ? code : code + 1);
};
const numberOf = (character: string): number => {
  const code = character.codePointAt(0) ?? 0;
  if (code >= LATIN) return code - LATIN + ASCII_DIGITS;
  return code - FIRST_DIGIT - (code > BACKSLASH ? 1 : 0);
};
const numbersOf = (text: string): readonly number[] => Array.from(text, numberOf);

function packStep(rows: readonly Row[], step: string, outcomes: readonly string[]): PackedStep {
  const places = new Map<string, number>();
  const numbers = rows.map(({ shows }) => {
    const own = shows[step]?.map((share) => digit(Math.round(HUNDREDTHS * share))).join('');
    if (own === undefined) return 0;
    const place = places.get(own) ?? places.size + 1;
    places.set(own, place);
    return place;
  });
  return { outcomes, shares: [...places.keys()].join(''), rows: numbers.map(digit).join('') };
}

export function pack({ steps, rows }: Table): PackedTable {
  const causes = [...new Set(rows.map(({ cause }) => cause))];
  return {
    causes,
    rows: {
      cause: rows.map(({ cause }) => digit(causes.indexOf(cause))).join(''),
      weight: rows.map(({ weight }) => Math.round(HUNDREDTHS * weight)),
      looks: rows.map(({ looks }) => looks),
    },
    steps: Object.fromEntries(Object.entries(steps).map(([id, outcomes]) => [id, packStep(rows, id, outcomes)])),
  };
}

export function unpack({ causes, rows, steps }: PackedTable): Table {
  const shown = Object.entries(steps).map(([id, { outcomes, ...packed }]) => {
    const hundredths = numbersOf(packed.shares);
    const sharesAt = (place: number): readonly number[] | undefined =>
      place === 0
        ? undefined
        : hundredths.slice((place - 1) * outcomes.length, place * outcomes.length).map((share) => share / HUNDREDTHS);
    return [id, numbersOf(packed.rows).map(sharesAt)] as const;
  });
  return {
    steps: Object.fromEntries(Object.entries(steps).map(([id, { outcomes }]) => [id, outcomes])),
    rows: numbersOf(rows.cause).map((cause, i): Row => {
      const shows = shown.flatMap(([id, byRow]) => {
        const own = byRow[i];
        return own ? [[id, own] as const] : [];
      });
      return {
        cause: causes[cause] ?? '',
        weight: (rows.weight[i] ?? 0) / HUNDREDTHS,
        looks: rows.looks[i] ?? 0,
        shows: Object.fromEntries(shows),
      };
    }),
  };
}
