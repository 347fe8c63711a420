import type { Rig } from '../rig/rig.ts';
import type { Answer } from '../steps/step.ts';

export type RepairResult = 'still' | 'better' | 'not-it';

/**
 * Everything that happened in a case, in order. Replaying the list gives the same screen: a link, a reload and a copy
 * in another browser are all this list.
 */
export type CaseEvent =
  /** "My bike" at the moment the case took it over. */
  | {
      readonly type: 'rig';
      readonly rig: Rig /** As it came, where this version cannot use all of it. */;
      readonly asCame?: unknown;
    }
  | { readonly type: 'answer'; readonly step: string; readonly answer: Answer }
  /** An earlier answer was changed. What was given under it is asked again, the rest is kept. */
  | { readonly type: 'revise'; readonly step: string; readonly answer: Answer }
  /** An answer that was doubted was given a second time, and it means the same: with the numbers that were read then. */
  | { readonly type: 'confirm'; readonly step: string; readonly answer?: Answer }
  /** An answer that was doubted could not be given a second time, and stays as it is. */
  | { readonly type: 'leave'; readonly step: string }
  /**
   * The fix of a verdict was done, and it is still wrong, or better and not good. Or it was not done, because the check
   * that separates it says that it is not this.
   */
  | { readonly type: 'repair'; readonly verdict: string; readonly result?: RepairResult }
  /** The fix of a verdict was done, and it is cured. */
  | { readonly type: 'cured'; readonly verdict: string }
  | { readonly type: 'note'; readonly text: string }
  /**
   * The case goes on in another flow with the same facts. `odd` are those that what is looked for there hardly explains,
   * and `by` the flows that it came through, the first of them first.
   */
  | {
      readonly type: 'handOver';
      readonly flow: string;
      readonly odd?: readonly string[];
      readonly by?: readonly string[];
    }
  /** The lines of a fix that are done, each by its mark. The latest of a fix counts, until a repair is noted. */
  | { readonly type: 'done'; readonly fix: string; readonly lines: readonly string[] }
  /** What this version does not know or has no use for, as it came. A newer one finds it again. */
  | { readonly type: 'kept'; readonly packed: readonly unknown[] };

export interface Case {
  readonly flow: string;
  readonly events: readonly CaseEvent[];
}
