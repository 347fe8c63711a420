import { CAUTIONS } from '../steps/cautions.ts';
import type { Leads, Sheet } from './numbered.ts';

/*
 * How large the type of a chart can be on one side of A4. It is reckoned, not tried: the site is built without a browser.
 */

/** In points, the largest first; the styles have a class for each. Smaller type is not read at an arm's length. */
export const TYPE_SIZES_PT = [12, 10.5, 9.5, 9, 8.6, 8.2] as const;
export type TypeSizePt = (typeof TYPE_SIZES_PT)[number];

const MM_PER_PT = 25.4 / 72;
/** A4 less its margins, as the styles have them: 297 and 210 mm of ISO 216, two columns with a gap. */
const HEIGHT_MM = 297 - 2 * 7;
const COLUMN_MM = (210 - 2 * 8 - 4) / 2;
const INSIDE_MM = COLUMN_MM - 3.6;
/** What the parts of a box take besides their lines. */
const BOX_MM = 3.7;
const ROW_MM = 0.7;
/** Widths of the two sides of an answer, as the styles divide them. */
const SAID_PART = 0.32;
const LEADS_PART = 0.64;
const LINE_RATIO = 1.17;
const CAUTION_RATIO = 0.92;
/** Between two cautions, and their heading. */
const CAUTION_MM = 0.4;
const CAUTION_HEAD_LINES = 1;
const TITLE_PT = 20;
const HEAD_CHARS = 330;
/** A wide font of a system: letters are so wide for their size. Measured on the widest that is usual. */
const LETTER_RATIO = 0.54;
/** Nothing is broken, so columns end unevenly: those of the cautions a little, those of the boxes by much of the tallest. */
const UNEVEN_BOX_RATIO = 0.6;
const UNEVEN_RATIO = 1.06;

const saidBy = (leads: Leads): string => {
  if (leads.kind === 'box') return '→ 00';
  return leads.kind === 'flow' ? `Other sheet: ${leads.title}` : leads.titles.join('. Then: ');
};

/** The height that a sheet takes in type of a size. */
export function heightMm({ boxes, cautions }: Sheet, sizePt: number): number {
  const linesIn = (chars: number, widthMm: number, size = sizePt) =>
    Math.ceil(chars / Math.floor(widthMm / (LETTER_RATIO * size * MM_PER_PT)));
  const lineMm = LINE_RATIO * sizePt * MM_PER_PT;
  const heights = boxes.map(({ ask, healthy, answers }) => {
    const rows = answers.map(({ said, leads }) =>
      Math.max(linesIn(said.length, SAID_PART * INSIDE_MM), linesIn(saidBy(leads).length, LEADS_PART * INSIDE_MM)),
    );
    const lines =
      linesIn(ask.length + 4, INSIDE_MM) +
      (healthy ? linesIn(healthy.length + 9, INSIDE_MM) : 0) +
      rows.reduce((so, one) => so + one, 0);
    return lines * lineMm + answers.length * ROW_MM + BOX_MM;
  });
  const column = heights.reduce((sum, one) => sum + one, 0);
  const whole = 2 * COLUMN_MM;
  const head = TITLE_PT * MM_PER_PT + linesIn(HEAD_CHARS, whole) * lineMm;
  const careLines = cautions.reduce(
    (sum, id) => sum + linesIn(CAUTIONS[id].length + 2, COLUMN_MM, CAUTION_RATIO * sizePt),
    0,
  );
  const care =
    CAUTION_HEAD_LINES * lineMm +
    (UNEVEN_RATIO * (careLines * lineMm * CAUTION_RATIO + cautions.length * CAUTION_MM)) / 2;
  return head + care + (column + UNEVEN_BOX_RATIO * Math.max(0, ...heights)) / 2;
}

/** The largest size at which a sheet fits, or none. */
export const typeSize = (sheet: Sheet): TypeSizePt | undefined =>
  TYPE_SIZES_PT.find((sizePt) => heightMm(sheet, sizePt) <= HEIGHT_MM);
