import type { Decided, WhyAgain } from '../../machines/decision.ts';
import type { HandsOver } from '../../machines/machine.ts';
import type { Remedy } from '../causes/cause.ts';
import type { Certainty } from '../inference/certainty.ts';
import type { PlanRemedy, PlanVerdict } from '../plan/verdict.ts';
import type { Rig } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';
import type { Answer, Facts, Step } from '../steps/step.ts';

/** One answered step on the way. */
export interface Terminal {
  readonly step: Step;
  readonly answer: Answer;
  readonly outcome: string;
}

/** What is open: a question, an answer to be given once more, or an end. */
export type Open =
  | { readonly kind: 'step'; readonly step: Step }
  | { readonly kind: 'doubt'; readonly step: Step; readonly because: WhyAgain }
  | {
      readonly kind: 'cause';
      readonly cause: string;
      readonly certainty: Certainty;
      readonly besides: readonly string[];
      readonly remedy: Remedy;
    }
  | { readonly kind: 'list'; readonly causes: readonly string[] }
  | { readonly kind: 'onward'; readonly to: HandsOver }
  /** What the page fetches late is needed, and not here yet. */
  | { readonly kind: 'waiting' }
  /** The end of a flow of explicit rows. */
  | { readonly kind: 'verdict'; readonly verdict: PlanVerdict; readonly remedy: PlanRemedy };

/** Where a case stands. */
export interface Standing {
  /** The name of the state that the flow stands in. */
  readonly state: string;
  readonly rig: Rig;
  readonly facts: Facts;
  readonly findings: Findings;
  /** Facts that a hand-over brought, that still hold, and that this flow has no use for. */
  readonly carried: Facts;
  /** Of those, what did not fit what is looked for here. */
  readonly odd: readonly string[];
  /** The flows that the case came through, the first of them first. */
  readonly cameBy: readonly string[];
  /** What was answered, in the order it was. */
  readonly terminals: readonly Terminal[];
  readonly open: Open;
  /** What the inference made of it; undefined where it was not asked, or there is none. */
  readonly decided: Decided | undefined;
  /** An earlier answer to the open step that could not be used, to show again. */
  readonly unusable: Answer | undefined;
  /** Steps whose answers were given or looked at a second time. */
  readonly checked: ReadonlySet<string>;
  /** The causes whose fix was done, and did not cure it. */
  readonly repairs: readonly string[];
  readonly cured: string | undefined;
  readonly notes: readonly string[];
}
