import type { CautionId } from '../steps/cautions.ts';
import { type Findings, is } from '../steps/outcome.ts';

/**
 * What only the check by meter asks for. Whoever has none is shown the proof by ear: cautions for work that he does not
 * do would drown those for the work that he does.
 */
export const withMeter = (f: Findings, cautions: readonly CautionId[]): readonly CautionId[] =>
  is(f, 'tools-at-hand', 'meter') ? cautions : [];
