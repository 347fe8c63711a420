import type { Flow } from '../../machines/rows.ts';
import type { Answer, Step } from '../steps/step.ts';
import type { Case, CaseEvent } from './events.ts';

const fits = (step: Step, answer: Answer): boolean => {
  if ('cannot' in answer) return true;
  if ('option' in answer) return step.kind !== 'reading' && Object.hasOwn(step.options, answer.option);
  return step.kind === 'reading' && Object.keys(answer.readings).every((name) => Object.hasOwn(step.readings, name));
};

/**
 * What a flow of today can use of a case from anywhere: an older version, another flow, a tampered link. The rest is
 * left out with a sentence each. Answers that a hand-over brought stay, also those to steps that this flow has not: the
 * flow that the case goes on to, or back to, need not ask them again.
 */
export function adopt(flow: Flow, it: Case): { readonly case: Case; readonly refused: readonly string[] } {
  const refused: string[] = [];
  const handedOverAt = it.events.findLastIndex((event) => event.type === 'handOver' && event.flow === flow.id);
  const verdicts = new Set(
    Object.values(flow.states).flatMap((state) => ('verdict' in state ? [state.verdict.id] : [])),
  );
  const keep = (event: CaseEvent, i: number): boolean => {
    switch (event.type) {
      case 'answer':
      case 'revise': {
        const step = flow.steps.get(event.step);
        if (!step && i < handedOverAt) return true;
        if (!step) refused.push(`An answer to “${event.step}” was left out: this flow has no such step.`);
        else if (!fits(step, event.answer))
          refused.push(`The answer to “${step.short}” was left out: it is not one of today’s answers.`);
        return step !== undefined && fits(step, event.answer);
      }
      case 'repair':
      case 'cured': {
        if (verdicts.has(event.verdict)) return true;
        refused.push(`A repair after “${event.verdict}” was left out: this flow has no such verdict.`);
        return false;
      }
      default:
        return true;
    }
  };
  return { case: { flow: flow.id, events: it.events.filter(keep) }, refused };
}
