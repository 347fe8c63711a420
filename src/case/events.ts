import type { Rig } from '../rig/rig.ts';
import type { Answer } from '../steps/step.ts';

/**
 * Everything that happened in a case, in order. Replaying the list gives the same screen: a link, a reload and a copy
 * in another browser are all this list.
 */
export type CaseEvent =
  /** "My bike" at the moment the case took it over. */
  | { readonly type: 'rig'; readonly rig: Rig }
  | { readonly type: 'answer'; readonly step: string; readonly answer: Answer }
  /** An earlier answer was changed. What was given under it is asked again, the rest is kept. */
  | { readonly type: 'revise'; readonly step: string; readonly answer: Answer }
  /** An answer that did not fit the others was checked again, and it is right. */
  | { readonly type: 'confirm'; readonly step: string }
  /** The fix of a verdict was done and it is still wrong, or better and not good; or its check says that it is not it. */
  | { readonly type: 'repair'; readonly verdict: string; readonly result?: 'still' | 'better' | 'not-it' }
  /** The fix of a verdict was done, and it is cured. */
  | { readonly type: 'cured'; readonly verdict: string }
  | { readonly type: 'note'; readonly text: string }
  /** The case goes on in another flow with the same facts. */
  | { readonly type: 'handOver'; readonly flow: string };

export interface Case {
  readonly flow: string;
  readonly events: readonly CaseEvent[];
}
