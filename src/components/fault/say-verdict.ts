import { cautionsOfFix } from '../../causes/action-cautions.ts';
import type { Remedy } from '../../causes/cause.ts';
import { lowerFirst } from '../../compute/first-letter.ts';
import type { Certainty } from '../../inference/certainty.ts';
import type { CautionId } from '../../steps/cautions.ts';
import type { Findings } from '../../steps/outcome.ts';
import { byWord } from '../caution/signal-words.ts';
import { SPOKEN } from '../caution/spoken.ts';
import { cautionsByCause } from './list-sections.ts';
import type { Check, FaultView } from './view.ts';

/** The lines of a verdict on the phone, in the order in which a caller needs them: he begins with what he hears first. */
export interface SpokenEnd {
  /** What it is, and how sure that is. */
  readonly tell: readonly string[];
  /** What to be careful of and what not to pay for, before he touches anything. */
  readonly mind: readonly string[];
  /** What he needs for it, or whoever goes to him. */
  readonly bring: readonly string[];
  /** What he does, and what proves that it helped. */
  readonly fix: readonly string[];
}

const SURE: Readonly<Record<Certainty, string>> = {
  proved: 'That is proved.',
  likely: 'That is likely, and not proved.',
  'short list': 'That is not proved yet.',
};

/** Cautions as they are said, the gravest first. */
export const spokenCare = (ids: readonly CautionId[]): readonly string[] =>
  byWord(ids).flatMap(([, own]) => own.map((id) => SPOKEN[id]));

const dontPay = (notBuy: readonly string[]): readonly string[] =>
  notBuy.map((line) => `Do not pay for ${lowerFirst(line)}`);
/** A check that was done is not asked for as if it were not: what was seen is looked at once more. */
const checkFirst = ({ text, isDone }: Check): readonly string[] =>
  isDone
    ? [text, 'Before anything is bought or booked, look at that once more.']
    : [`Before anything is bought or booked, check this: ${text}`];
const toBring = (tools: string, parts: readonly string[]): readonly string[] => [
  tools === 'None' ? 'No tools.' : `${tools}.`,
  ...parts.map((part) => (part.endsWith('.') ? part : `${part}.`)),
];

/** A cause, told to a caller. What costs money and is not proved waits for its check. */
export function tellCause(
  remedy: Remedy,
  f: Findings,
  {
    certainty,
    check,
    ofCheck = [],
  }: {
    readonly certainty: Certainty;
    readonly check: Check | undefined;
    /** What to be careful of with the check. */
    readonly ofCheck?: readonly CautionId[];
  },
): SpokenEnd {
  return {
    tell: [remedy.what, SURE[certainty]],
    fix: [
      ...(check === undefined ? [] : checkFirst(check)),
      ...remedy.fix,
      `Then this proves the cure: ${remedy.proofOfCure.byEar}`,
    ],
    mind: [
      ...spokenCare([...(check === undefined ? [] : ofCheck), ...cautionsOfFix(remedy, f)]),
      ...dontPay(remedy.notBuy),
    ],
    bring: toBring(remedy.tools, remedy.parts),
  };
}

/** Those who are left, told to a caller: nothing is bought before a check. */
export const tellList = (view: FaultView, causes: readonly string[]): SpokenEnd => ({
  tell: [
    causes.length === 0
      ? 'Nothing that was asked here explains all of it.'
      : `It is not proved yet. These are left: ${causes.map((cause) => view.nameOf(cause)).join('; ')}.`,
  ],
  fix: [
    ...causes.flatMap((cause) => {
      const check = view.splitOf(cause);
      return check === undefined ? [] : [`${view.nameOf(cause)}. ${check.isDone ? '' : 'The check: '}${check.text}`];
    }),
  ],
  mind: [
    ...spokenCare([...cautionsByCause(view, causes).values()].flat()),
    'Buy and book nothing before a check says which one it is.',
  ],
  bring: [view.hasMeter ? 'The meter.' : 'A multimeter, if one can be had: it tells more than ears do.'],
});

/** A case that another list of causes takes on, told to a caller: nothing is done yet. */
export const tellOnward = (title: string, because: string): SpokenEnd => ({
  tell: [
    because,
    `We go on with this: ${title}.`,
    'All that you told me counts there as well. I ask only what is still missing.',
  ],
  mind: ['Buy and book nothing yet.', 'Leave open what is open, and take nothing else apart, until I say so.'],
  bring: [],
  fix: [],
});

/** What a plan answers, told to a caller, with what it hangs on or what would follow. */
export function tellPlan(
  remedy: {
    readonly what: string;
    readonly certainty: Certainty;
    readonly fix: readonly string[];
    readonly proof: string;
    readonly cautions: readonly CautionId[];
    readonly proofCautions: readonly CautionId[];
    readonly notBuy: readonly string[];
    readonly tools: string;
  },
  conditions: readonly string[],
): SpokenEnd {
  return {
    tell: [remedy.what, SURE[remedy.certainty], ...conditions],
    fix: [...remedy.fix, `This shows that it is so: ${remedy.proof}`],
    mind: [...spokenCare([...remedy.cautions, ...remedy.proofCautions]), ...dontPay(remedy.notBuy)],
    bring: toBring(remedy.tools, []),
  };
}
