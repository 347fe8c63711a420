import type { CautionId } from '../steps/cautions.ts';
import type { Findings } from '../steps/outcome.ts';
import type { Part } from '../steps/step.ts';

/** One number, already written out for this bike. */
export interface PlanNumber {
  readonly label: string;
  readonly value: string;
}

/** What the answer's computation makes of this bike and what is known of it. */
export interface PlanRemedy {
  /** What must change, or that nothing must, in one sentence. */
  readonly what: string;
  /** Read on this bike, resting on what was told, or not decided yet. */
  readonly certainty: 'proved' | 'likely' | 'short list';
  /** Why it is that sure, in one sentence. */
  readonly howSure: string;
  /** One or two sentences of background, if they help. */
  readonly background?: string;
  readonly numbers: readonly PlanNumber[];
  /** What to do, in order. */
  readonly fix: readonly string[];
  readonly tools: string;
  readonly minutes: number;
  readonly who: string;
  /** What not to pay for, and why. */
  readonly notBuy: readonly string[];
  /** What goes wrong if it is done all the same. */
  readonly ifDoneAnyway?: string;
  readonly cautions: readonly CautionId[];
  /** The check that shows that it is so, with the reading to expect. */
  readonly proof: string;
  /** What else is possible, each with what separates it. */
  readonly mayAlsoBe?: readonly { readonly what: string; readonly split: string }[];
}

/** A final state of a plan, or of the reading of a profile. */
export interface PlanVerdict {
  readonly id: string;
  /** A few words for lists. */
  readonly title: string;
  /** The faults of the catalogue that it mends; empty when nothing is broken. */
  readonly faults: readonly string[];
  /** Steps whose answers speak for it, shown as "how we know" when they were answered. */
  readonly evidence: readonly string[];
  /** Parts that are changed by it: answers that observe them are asked again after that. */
  readonly mends: readonly Part[];
  /** Slug of the article behind it. */
  readonly article: string;
  remedy(findings: Findings): PlanRemedy;
}
