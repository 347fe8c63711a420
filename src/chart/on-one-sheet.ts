import type { Late, StagedFlow } from '../../machines/machine.ts';
import type { Build } from './builds.ts';
import { numbered, type Sheet } from './numbered.ts';
import { type TypeSizePt, typeSize } from './type-size.ts';
import { type Chart, unrolled } from './unroll.ts';

export interface OneSheet {
  readonly chart: Chart;
  readonly sheet: Sheet;
  readonly sizePt: TypeSizePt;
}

/** Four ways in five. */
export const COVER_SHARE = 0.8;
/** So many questions at most, fewer where they do not fit. */
const QUESTIONS = [30, 26, 22, 18, 12] as const;
const SMALLEST_PT: TypeSizePt = 6.8;

/** A flow on one sheet of A4: as close to the page as fits in type that is read at an arm's length. */
export function onOneSheet(flow: StagedFlow, late: Late, build: Build): OneSheet {
  let nearest: OneSheet | undefined;
  for (const mostQuestions of QUESTIONS) {
    const chart = unrolled(flow, late, build.rig, { coverShare: COVER_SHARE, mostQuestions });
    const sheet = numbered(chart, flow, late);
    const sizePt = typeSize(sheet);
    const one = { chart, sheet, sizePt: sizePt ?? SMALLEST_PT };
    if (sizePt !== undefined && chart.coveredShare >= COVER_SHARE) return one;
    // Better to name fewer than to run over.
    if (!nearest || sizePt !== undefined) nearest = one;
  }
  return nearest as OneSheet;
}
