import type { WhyAgain } from '../../../machines/decision.ts';
import { lowerFirst } from '../../compute/first-letter.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import { inWords, type Step } from '../../steps/step.ts';
import { anotherWay } from './another-way.ts';
import { knownOf } from './known-of.ts';
import type { FaultView } from './view.ts';

/** What the answer does not fit, and what that would rather show. */
function misfitInWords(view: FaultView, step: Step): string {
  const misfit = view.misfit(step.id);
  // What another flow looks for is many causes in one: no answer of this one is typical of it.
  if (misfit === undefined || view.lookedForBy(misfit.cause) !== undefined) return '';
  const { name, shows } = misfit;
  return `: “${name}” ${shows === undefined ? 'seldom shows this' : `would show “${step.outcomes[shows] ?? shows}”`}`;
}

const UNDO_AND_REDO =
  'Undo it, and do it once more: that brought it back, and if the sound goes and comes with it, that is the proof.';
const LOOK_ONCE_MORE = 'Look once more, another way if you can:';

/** Why a question is asked once more: what does not fit, or that all hangs on it. Nobody is said to have been wrong. */
export function doubtInWords(view: FaultView, step: Step, because: WhyAgain): string {
  const given = `“${inWords(step.short, view.standing)}: ${knownOf(step, view.standing)}”`;
  if (typeof because === 'object') {
    const { deniedBy } = because;
    return `${given} does not fit “${inWords(deniedBy.short, view.standing)}: ${knownOf(deniedBy, view.standing)}”. Which is it?`;
  }
  if (outcomeNamed(view.standing.findings, step.id) === 'cured') return UNDO_AND_REDO;
  const way = lowerFirst(anotherWay(step));
  if (because === 'pivotal')
    return `Everything rests on this answer: ${given}. Take it once more, another way if you can: ${way}`;
  return `${given} does not fit the rest${misfitInWords(view, step)}. ${LOOK_ONCE_MORE} ${way}`;
}
