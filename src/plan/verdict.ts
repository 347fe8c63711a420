import type { CautionId } from '../steps/cautions.ts';
import type { StepId } from '../steps/ids.ts';
import type { Findings } from '../steps/outcome.ts';
import type { Part } from '../steps/step.ts';
import type { PlanAct } from './acts.ts';
import type { Property, StoredProfile } from './profile/profile.ts';

export interface Conditional {
  readonly when: string;
  readonly follows: string;
}

/** What an answer hangs on: the profiles for which it is another one, and what those need. */
export interface Unless extends Conditional {
  readonly profiles: readonly StoredProfile[];
  readonly demand: Demand;
}

/** What follows when the open thing turns out so, who does it, and how long it takes. */
export interface Finding extends Conditional {
  readonly who: string;
  readonly minutes: number;
  readonly demand: Demand;
}

/** What a reflash has to change: the properties of the stored profile. What is not named stays as it is. */
export type ToSelect = Readonly<Partial<Record<Property, boolean>>>;

/** What a build needs done to its head unit. */
export type Demand =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'find-out' }
  | {
      readonly kind: 'select';
      readonly to: ToSelect;
      /** Only if the head unit holds such a profile. */
      readonly ifStored?: true;
      /** What is selected where it holds none. */
      readonly orElse?: ToSelect;
      /** Or this pair is moved to an amplifier, and nothing is selected. */
      readonly orMove?: 'front' | 'rear';
    };

/** A part of the paper for a counter: a heading and its lines. */
export interface SheetPart {
  readonly title: string;
  readonly lines: readonly string[];
}
export interface Sheet {
  readonly parts: readonly SheetPart[];
}

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
  /** What the answer hangs on, where it is not proved: when it is another one, and which. */
  readonly unless?: readonly Unless[];
  /** What holds whatever turns out, where the answer is still open. */
  readonly holds?: readonly string[];
  /** What follows from each possible finding, where the answer is still open. */
  readonly findings?: readonly Finding[];
  /** The step whose answer is given again once what is open is known. */
  readonly reopens?: StepId;
  /** What is to be done to the head unit, as data. */
  readonly demand?: Demand;
  /** What whoever does it is given on paper; only where there is something to do or to keep. */
  readonly sheet?: Sheet;
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
  /** What is done for it, and for the check, as data. */
  readonly acts: readonly PlanAct[];
  readonly proofActs: readonly PlanAct[];
  /** What to be careful of, which follows from that; with the check, besides what was said before. */
  readonly cautions: readonly CautionId[];
  readonly proofCautions: readonly CautionId[];
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
