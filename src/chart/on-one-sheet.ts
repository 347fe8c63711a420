import type { Late, StagedFlow } from '../../machines/machine.ts';
import type { Build } from './builds.ts';
import { numbered, type Sheet } from './numbered.ts';
import { type TypeSizePt, typeSize } from './type-size.ts';
import { type Chart, type Reach, unroll } from './unroll.ts';

export interface OneSheet {
  readonly chart: Chart;
  readonly sheet: Sheet;
  readonly sizePt: TypeSizePt;
}

/** Four ways in five. */
export const COVER_SHARE = 0.8;
/** So many questions at most: more were never read on one sheet. */
const MOST_QUESTIONS = 30;
/** From the one that follows the page most closely to the one that names most at once. */
const REACHES: readonly Reach[] = [
  { toldBits: 0.3, mostNamed: 3, namedShare: 0.85 },
  { toldBits: 0.3, mostNamed: 4, namedShare: 0.8 },
  { toldBits: 0.3, mostNamed: 4, namedShare: 0.75 },
  { toldBits: 0.5, mostNamed: 3, namedShare: 0.85 },
  { toldBits: 0.5, mostNamed: 4, namedShare: 0.8 },
  { toldBits: 0.5, mostNamed: 4, namedShare: 0.75 },
  { toldBits: 0.5, mostNamed: 4, namedShare: 0.7 },
  { toldBits: Infinity, mostNamed: 4, namedShare: 0.75 },
  { toldBits: Infinity, mostNamed: 4, namedShare: 0.7 },
  { toldBits: 0.5, mostNamed: 5, namedShare: 0.7 },
  { toldBits: 0.5, mostNamed: 6, namedShare: 0.75 },
  { toldBits: Infinity, mostNamed: 5, namedShare: 0.7 },
  { toldBits: Infinity, mostNamed: 6, namedShare: 0.65 },
];

/** A flow on one sheet of A4: as close to the page as covers enough in type that is read at an arm's length. */
export function onOneSheet(flow: StagedFlow, late: Late, { title, rig }: Build): OneSheet {
  for (const reach of REACHES) {
    const chart = unroll(flow, late, rig, reach, { coverShare: COVER_SHARE, mostQuestions: MOST_QUESTIONS });
    if (chart.coveredShare < COVER_SHARE) continue;
    const sheet = numbered(chart, flow, late);
    const sizePt = typeSize(sheet);
    if (sizePt !== undefined) return { chart, sheet, sizePt };
  }
  throw new Error(`${flow.id}: no chart of “${title}” covers ${COVER_SHARE} on one sheet in type that can be read`);
}
