import { type Answer, inWords, type Step } from '../steps/step.ts';
import { type AnyFlow, isStaged } from './any-flow.ts';
import { pack, unpack } from './case-text.ts';
import { bikeOf } from './change.ts';
import type { Case, CaseEvent } from './events.ts';
import { verdictNow } from './old-ids.ts';

const fits = (step: Step, answer: Answer): boolean => {
  if ('cannot' in answer) return true;
  if ('option' in answer) return step.kind !== 'reading' && Object.hasOwn(step.options, answer.option);
  return step.kind === 'reading' && Object.keys(answer.readings).every((name) => Object.hasOwn(step.readings, name));
};

/** One sentence about all that was left out for the same reason. Nothing was: no sentence. */
const sentence = (names: readonly string[], one: (name: string) => string, many: string): readonly string[] =>
  names.length === 0 ? [] : [names.length === 1 ? one(names[0] ?? '') : `${names.length} ${many}`];

/** What a flow can end in, and a repair can follow on. */
const verdictsOf = (flow: AnyFlow): ReadonlySet<string> =>
  new Set(
    isStaged(flow)
      ? flow.ends
      : Object.values(flow.states).flatMap((state) => ('verdict' in state ? [state.verdict.id] : [])),
  );

/**
 * What a flow of today can use of a case from anywhere: an older or a newer version, another flow, a tampered link. The
 * rest is left aside, with one sentence for each reason, and kept in the case for a version that can use it. Answers that a hand-over brought stay, also those to steps that this flow
 * has not: the flow that the case goes on to, or back to, need not ask them again.
 */
export function adopt(flow: AnyFlow, it: Case): { readonly case: Case; readonly refused: readonly string[] } {
  const noSuchStep: string[] = [];
  const noLongerAnswers: string[] = [];
  const noSuchVerdict: string[] = [];
  const handedOverAt = it.events.findLastIndex((event) => event.type === 'handOver' && event.flow === flow.id);
  const verdicts = verdictsOf(flow);
  const aside = (event: CaseEvent): CaseEvent => ({ type: 'kept', packed: pack(event) });
  const kept = (event: CaseEvent, i: number): CaseEvent => {
    switch (event.type) {
      case 'answer':
      case 'revise': {
        const step = flow.steps.get(event.step);
        if (!step && i < handedOverAt) return event;
        if (!step) noSuchStep.push(event.step);
        else if (!fits(step, event.answer)) noLongerAnswers.push(inWords(step.short, { rig: bikeOf(it), facts: {} }));
        return step !== undefined && fits(step, event.answer) ? event : aside(event);
      }
      case 'confirm': {
        const step = flow.steps.get(event.step);
        const isUsable = !event.answer || (step ? fits(step, event.answer) : i < handedOverAt);
        return isUsable ? event : { type: 'confirm', step: event.step };
      }
      case 'repair':
      case 'cured': {
        const verdict = verdictNow(flow.id, event.verdict);
        if (verdicts.has(verdict)) return { ...event, verdict };
        noSuchVerdict.push(event.verdict);
        return aside(event);
      }
      default:
        return event;
    }
  };
  /** What was left aside before may be of use here. If not, that was said when it came. */
  const found = (event: CaseEvent, i: number): CaseEvent => {
    if (event.type !== 'kept') return kept(event, i);
    const told = [noSuchStep, noLongerAnswers, noSuchVerdict].map((names) => names.length);
    const inside = unpack(event.packed);
    const usable = inside && inside.type !== 'kept' ? kept(inside, i) : event;
    for (const [n, names] of [noSuchStep, noLongerAnswers, noSuchVerdict].entries()) names.length = told[n] ?? 0;
    return usable.type === 'kept' ? event : usable;
  };
  const events = it.events.map(found);
  const refused = [
    ...sentence(
      noSuchStep,
      (id) => `An answer to “${id}” was left out: this flow has no such step.`,
      'answers were left out: this flow has no such steps.',
    ),
    ...sentence(
      noLongerAnswers,
      (short) => `The answer to “${short}” was left out: it is not one of today’s answers.`,
      'answers were left out: they are not among today’s answers.',
    ),
    ...sentence(
      noSuchVerdict,
      (id) => `A repair after “${id}” was left out: this flow has no such verdict.`,
      'repairs were left out: this flow has no such verdicts.',
    ),
  ];
  return { case: { flow: flow.id, events }, refused };
}
