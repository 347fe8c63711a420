import { bothOf, canBeBuilt, causeTitle, observationsOf } from '../../../machines/decision.ts';
import { elsewhere } from '../../../machines/elsewhere.ts';
import { becauseOf, type HandsOver, type Late, type StagedFlow } from '../../../machines/machine.ts';
import type { Standing } from '../../case/standing.ts';
import { type Cause, splitOf } from '../../causes/cause.ts';
import { hangsOn, misfitOf, mostlyShows } from '../../inference/doubt.ts';
import { evidence, type Moved } from '../../inference/evidence.ts';
import { reckoned } from '../../inference/pairs.ts';
import { type Knowledge, type Observation, type Posterior, ranked, type Share } from '../../inference/posterior.ts';
import { compile, isUnthought, type Model } from '../../inference/table.ts';
import type { StepId } from '../../steps/ids.ts';
import { type Findings, is, outcomeNamed } from '../../steps/outcome.ts';
import { inWords } from '../../steps/step.ts';
import { knownOf } from './known-of.ts';

/**
 * A cause that leads against the word of its own check leads because everything else fits worse: that check, or what speaks
 * against all others, was misread. Which of them it was, the check tells when it is done once more.
 */
const AGAINST_ALL_THE_SAME =
  'That speaks against it, and everything else that was answered fits the others even less. Do that check once more, another way if you can.';

const AGAINST: ReadonlySet<Moved['speaks']> = new Set(['against', 'misfit']);

/** What stands for all that nobody thought of, where causes are listed by name. */
export const UNTHOUGHT = 'unthought';

/** The check that separates a cause: what to do, or what was found where it was done as a step. */
export interface Check {
  readonly text: string;
  readonly isDone: boolean;
  /** It was done, and what it showed the cause seldom shows. */
  readonly isAgainst?: boolean;
}

/** What the screens of a fault flow ask of a case: names, shares, and what moved them. */
export interface FaultView {
  readonly flow: StagedFlow;
  readonly standing: Standing;
  readonly late: Late;
  readonly model: Model;
  readonly believed: Posterior;
  /**
   * All causes, the likeliest first; what nobody thought of stands among them once. What was ruled out by its check
   * comes last, whatever the answers still say for it.
   */
  readonly shares: readonly Share[];
  /** The causes whose own check said that it is not them. */
  readonly ruledOut: ReadonlySet<string>;
  readonly hasMeter: boolean;
  nameOf(cause: string): string;
  /** The cause that an answer does not fit, as it is called without that answer, and what it mostly shows instead. */
  misfit(
    step: string,
  ): { readonly cause: string; readonly name: string; readonly shows: string | undefined } | undefined;
  causeOf(cause: string): Cause | undefined;
  shareOf(cause: string): number;
  /** The flow that looks for a cause which is not looked for here. */
  lookedForBy(cause: string): HandsOver | undefined;
  /** The check that separates a cause from the rest, with the tools at hand. */
  splitOf(cause: string): Check | undefined;
  /** The same; of a cause that another flow looks for, why that one is better at it. */
  checkOf(cause: string): string | undefined;
  /** What each answer did for or against a cause, the strongest first. */
  moved(cause: string): readonly Moved[];
  /** The answers without any one of which a cause would not lead, the one it hangs on most first. */
  hangsOn(cause: string): readonly Observation[];
}

const NOT_IN_THE_LIST = 'Something that is not in this list';

/**
 * Two suspects stand for what nobody thought of. To whoever reads them they are one, and so is what this bike cannot have:
 * where only that would explain the answers, it is something else.
 */
function thoughtOfOrNot(shares: readonly Share[], canBe: (cause: string) => boolean): readonly Share[] {
  const isNamed = ({ cause }: Share) => !isUnthought(cause) && canBe(cause);
  const thought = shares.filter(({ cause }) => !isUnthought(cause));
  const shareRatio = shares.reduce((sum, one) => (isNamed(one) ? sum : sum + one.shareRatio), 0);
  return [
    ...thought.map((one) => (isNamed(one) ? one : { ...one, shareRatio: 0 })),
    { cause: UNTHOUGHT, shareRatio },
  ].toSorted((a, b) => b.shareRatio - a.shareRatio);
}

/** The questions that are asked in a fixed order need no reckoning; whoever watches sees it from the start. */
function reckonedNow(flow: StagedFlow, { decided, findings, checked }: Standing, late: Late) {
  if (decided?.reckoning) return decided.reckoning;
  const known: Knowledge = { observations: observationsOf(flow, findings, checked), repairs: [] };
  const { model, believed } = reckoned(compile(late.table), known, bothOf(flow));
  return { model, believed, known, shares: ranked(model, believed) };
}

export function viewOf(flow: StagedFlow, standing: Standing, late: Late): FaultView {
  const { model, believed, known, shares } = reckonedNow(flow, standing, late);
  const { findings } = standing;
  const hasMeter = is(findings, 'tools-at-hand', 'meter');
  const ruledOut = new Set(known.repairs.flatMap(({ cause, result }) => (result === 'not-it' ? [cause] : [])));
  const listed = thoughtOfOrNot(shares, canBeBuilt({ model, known }));
  const all = [...listed.filter((one) => !ruledOut.has(one.cause)), ...listed.filter((one) => ruledOut.has(one.cause))];
  // Who noted what as cured may come out of a link: what every object has is no cause.
  const causeOf = (cause: string) => (Object.hasOwn(late.causes, cause) ? late.causes[cause] : undefined);
  const lookedForBy = (cause: string) => flow.handsOver.find((to) => elsewhere(to.flow) === cause);
  const single = compile(late.table);
  let movedBy: ReturnType<typeof evidence> | undefined;
  const moved = (cause: string): readonly Moved[] => {
    movedBy ??= evidence(model, known, single);
    return movedBy(cause);
  };
  const shareOf = (cause: string) => all.find((one) => one.cause === cause)?.shareRatio ?? 0;
  const nameIn = (cause: string, f: Findings) =>
    cause === UNTHOUGHT ? NOT_IN_THE_LIST : causeTitle(flow, cause, f, late.causes);
  const checkFor = (id: string): Check | undefined => {
    const cause = causeOf(id);
    if (!cause) return undefined;
    const tool = hasMeter ? 'byMeter' : 'without';
    const split = splitOf(cause, findings);
    const done = [split.asStep?.[tool] ?? []]
      .flat()
      .flatMap((step) => flow.steps.get(step) ?? [])
      .find((step) => standing.facts[step.id] !== undefined && outcomeNamed(findings, step.id) !== 'cannot');
    if (!done) return { text: split[tool], isDone: false };
    const isAgainst = moved(id).some(({ step, speaks }) => step === done.id && AGAINST.has(speaks));
    const told = `You did its check: “${inWords(done.short, standing)}: ${knownOf(done, standing)}”.`;
    const against = all[0]?.cause === id ? AGAINST_ALL_THE_SAME : 'That speaks against it.';
    return { text: isAgainst ? `${told} ${against}` : told, isDone: true, isAgainst };
  };
  return {
    flow,
    standing,
    late,
    model,
    believed,
    shares: all,
    ruledOut,
    hasMeter,
    nameOf: (cause) => nameIn(cause, findings),
    misfit: (step) => {
      const one = known.observations.find((other) => other.step === step);
      const cause = one && misfitOf(model, single, known, one);
      if (one === undefined || cause === undefined) return undefined;
      const shows = mostlyShows(single, known, cause, step);
      const rest = {
        ...findings,
        outcome: (id: StepId) => (id === step ? undefined : findings.outcome(id)),
      } as Findings;
      return { cause, name: nameIn(cause, rest), shows: shows === one.outcome ? undefined : shows };
    },
    causeOf,
    shareOf,
    lookedForBy,
    splitOf: checkFor,
    checkOf: (id) => {
      const to = lookedForBy(id);
      return checkFor(id)?.text ?? (to && becauseOf(to, findings));
    },
    moved,
    hangsOn: (cause) => hangsOn(model, known, cause),
  };
}
