import type { ProofOfCure } from '../causes/cause.ts';
import type { Rig } from '../rig/rig.ts';
import type { CautionId } from '../steps/cautions.ts';
import type { Findings } from '../steps/outcome.ts';
import type { Facts, Part } from '../steps/step.ts';
import type { Suspect } from './suspects.ts';

/** How sure a verdict is: a reading or a cure proves it, the odds make it likely, or several are left. */
export type Certainty = 'proved' | 'likely' | 'short list';

/** One number of the remedy, already written out for this bike. */
export interface RemedyNumber {
  readonly label: string;
  readonly value: string;
}

/** What the verdict's computation makes of this bike and what is known of it. */
export interface Remedy {
  /** What is wrong, or what must change, in one sentence. */
  readonly what: string;
  readonly certainty: Certainty;
  /** Why it is that sure, in one sentence. */
  readonly howSure: string;
  /** One or two sentences of background, if they help. */
  readonly background?: string;
  readonly numbers: readonly RemedyNumber[];
  /** The fix, in order. */
  readonly fix: readonly string[];
  readonly tools: string;
  readonly minutes: number;
  readonly who: string;
  /** What not to pay for, and why. */
  readonly notBuy: readonly string[];
  /** What goes wrong if it is done all the same. */
  readonly ifDoneAnyway?: string;
  readonly cautions: readonly CautionId[];
  /** The check that proves the cure, with the reading to expect. One sentence, or one for ears and one for a meter. */
  readonly proof: string | ProofOfCure;
  /** What else it may be, likeliest first, each with a harmless check that separates it. */
  readonly mayAlsoBe?: readonly { readonly what: string; readonly split: string }[];
}

/** Another flow that takes the case on, why, and what it need not ask any more. */
export interface HandsOver {
  readonly flow: string;
  readonly because: string;
  readonly answers: Facts;
}

/** A final state of a flow. */
export interface Verdict {
  readonly id: string;
  /** A few words for lists. */
  readonly title: string;
  /** The faults of the catalogue that it stands for; empty when it says that nothing is broken. */
  readonly faults: readonly string[];
  /** Steps whose answers speak for it, shown as "how we know" when they were answered. */
  readonly evidence: readonly string[];
  /** Parts that the fix touches: answers that observe them are asked again after a repair. */
  readonly mends: readonly Part[];
  /** What the fix makes true of the rig. */
  readonly afterwards?: (rig: Rig) => Rig;
  /** Slug of the article behind it. */
  readonly article?: string;
  /** Set where the cause is looked for in another flow. */
  readonly handsOver?: (findings: Findings) => HandsOver | undefined;
  /** A list of those who are left needs the suspects, which a page fetches late; no other verdict reads them. */
  remedy(findings: Findings, suspects?: readonly Suspect[]): Remedy;
}
