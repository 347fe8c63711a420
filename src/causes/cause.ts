import type { CautionId } from '../steps/cautions.ts';
import type { ConditionId } from '../steps/conditions.ts';
import type { ConstantStepId } from '../steps/ids.ts';
import type { Findings } from '../steps/outcome.ts';
import type { Part } from '../steps/step.ts';
import { ofTheLead } from '../steps/supply/unfused.ts';
import type { TestPoint } from '../steps/test-points.ts';
import type { Figure } from './figure.ts';
import type { ReadFirst } from './read-first.ts';
import type { RepairAction } from './repair-action.ts';

/** What a check by meter needs, and where its probes go: its cautions follow. */
export interface CheckNeeds {
  readonly needs?: readonly ConditionId[];
  readonly touches?: readonly TestPoint[];
}

/** The check that proves a cure: what ears can tell, and what a meter adds where there is one. */
export interface ProofOfCure extends CheckNeeds {
  readonly byEar: string;
  readonly byMeter?: string;
}

/** What a cause's computation makes of this bike and of what is known of it. */
export interface Remedy {
  /** What is wrong, in one sentence that claims nothing that was not answered. */
  readonly what: string;
  /** One or two sentences of background, if they help. */
  readonly background?: string;
  readonly numbers: readonly Figure[];
  /** What is read off the bike before it: with what was read it is worked out anew. */
  readonly readFirst?: readonly ReadFirst[];
  /** What the fix does to the bike. */
  readonly repair: readonly RepairAction[];
  /** The fix in words, in order. */
  readonly fix: readonly string[];
  readonly tools: string;
  readonly minutes: number;
  readonly who: string;
  /** What to buy for it, with its numbers; empty where nothing is. */
  readonly parts: readonly string[];
  /** What not to pay for, and why. */
  readonly notBuy: readonly string[];
  /** What goes wrong if that is done all the same. */
  readonly ifDoneAnyway?: string;
  /** What to be careful of besides what follows from the actions. */
  readonly cautions?: readonly CautionId[];
  /** A test put it right already: there is nothing left to buy or to make sure of first. */
  readonly alreadyDone?: true;
  readonly proofOfCure: ProofOfCure;
}

/** A step that is the same check, or several of which any is. */
type AsStep = ConstantStepId | readonly ConstantStepId[];

/** The harmless check that separates a cause from the rest, with a meter and without. */
export interface Split extends CheckNeeds {
  readonly byMeter: string;
  readonly without: string;
  /** The steps that are the same check: whoever did them is not sent to do it again. */
  readonly asStep?: { readonly byMeter?: AsStep; readonly without?: AsStep };
  /** What to be careful of with the one without. */
  readonly cautions?: readonly CautionId[];
}

/** Faults with the same repair. How sure a verdict is, what else it may be and what speaks for it are the inference's. */
export interface Cause {
  readonly id: string;
  /** A few words for lists and for the head of the verdict; the side is in it where it is known. */
  readonly title: string | ((findings: Findings) => string);
  /** The faults of the model that it stands for: `id` for all variants of a fault, `id@variant` for one. */
  readonly faults: readonly string[];
  /** Nothing is broken: what a sound bike of the build shows is a sign of it. */
  readonly byDesign?: true;
  /**
   * It is not called proved before one of these steps came out as it mostly does with it: that all other causes we know of
   * are ruled out is no proof, since one that we do not know of would look the same without them.
   */
  readonly provedBy?: readonly ConstantStepId[];
  /** What separates it. Where it hangs on what was answered, it is not a test that was done already. */
  readonly split: Split | ((findings: Findings) => Split);
  /** Parts of the bike that the fix touches: answers that observe them are asked again after it. */
  readonly mends: readonly Part[];
  /** Slug of the article behind it. */
  readonly article?: string;
  remedy(findings: Findings): Remedy;
}

/** The title on this bike. */
export const titleOf = ({ title }: Cause, findings: Findings): string =>
  typeof title === 'string' ? title : title(findings);

/** The check that separates it on this bike. */
export function splitOf({ split }: Cause, findings: Findings): Split {
  const own = typeof split === 'function' ? split(findings) : split;
  return { ...own, byMeter: ofTheLead(own.byMeter, findings), without: ofTheLead(own.without, findings) };
}

/** The remedy as it is said on this bike. */
export function remedyOf(cause: Cause, findings: Findings): Remedy {
  const { fix, proofOfCure, ...rest } = cause.remedy(findings);
  const { byEar, byMeter } = proofOfCure;
  return {
    ...rest,
    fix: fix.map((line) => ofTheLead(line, findings)),
    proofOfCure: {
      ...proofOfCure,
      byEar: ofTheLead(byEar, findings),
      ...(byMeter !== undefined && { byMeter: ofTheLead(byMeter, findings) }),
    },
  };
}
