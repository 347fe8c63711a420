import { elsewhere } from '../../machines/elsewhere.ts';
import type { Rig } from '../rig/rig.ts';
import type { Answer, Facts } from '../steps/step.ts';
import type { Case, CaseEvent, RepairResult } from './events.ts';
import type { Standing } from './standing.ts';

/** The ways a case grows. Each gives a new case; the old one stays as it was. */

const add = (it: Case, event: CaseEvent): Case => ({ ...it, events: [...it.events, event] });

export const answered = (it: Case, step: string, answer: Answer): Case => add(it, { type: 'answer', step, answer });
export const revised = (it: Case, step: string, answer: Answer): Case => add(it, { type: 'revise', step, answer });
/** The same answer after a second look, with what was read then where that is another number. */
export const confirmed = (it: Case, step: string, answer?: Answer): Case =>
  add(it, { type: 'confirm', step, ...(answer && { answer }) });
/** A doubted answer that cannot be given a second time. */
export const leftAsItIs = (it: Case, step: string): Case => add(it, { type: 'leave', step });
/** A fix that was done and did not cure it, or a check that says that it is not this. */
export const repaired = (it: Case, verdict: string, result?: RepairResult): Case =>
  add(it, { type: 'repair', verdict, ...(result && { result }) });
export const cured = (it: Case, verdict: string): Case => add(it, { type: 'cured', verdict });
export const noted = (it: Case, text: string): Case => add(it, { type: 'note', text });

/** What came with the bike and is not known here goes on with it. */
export const onBike = (it: Case, rig: Rig): Case => {
  const asCame = bikeEvent(it)?.asCame;
  return add(it, { type: 'rig', rig, ...(asCame !== undefined && { asCame: { ...(asCame as object), ...rig } }) });
};

/** The lines of a fix that are done, by their marks. */
export function doneOf({ events }: Case, fix: string): readonly string[] {
  const since = events.findLastIndex(({ type }) => type === 'repair');
  const last = events.slice(since + 1).findLast((event) => event.type === 'done' && event.fix === fix);
  return last?.type === 'done' ? last.lines : [];
}
/** The case with these lines of a fix done, and no others: what was noted of it before is not kept beside it. */
export const withDone = ({ events, ...it }: Case, fix: string, lines: readonly string[]): Case => {
  const others = events.filter((event) => event.type !== 'done' || event.fix !== fix);
  return { ...it, events: [...others, { type: 'done', fix, lines }] };
};

const STAYS: readonly CaseEvent['type'][] = ['note', 'done', 'kept'];

/**
 * Back drops the last event, of those that are asked for. The bike that the case began with stays, and so does what was
 * noted, done of a fix, or kept for another version. It
 * does not go behind a hand-over: the answers before it belong to another page.
 */
export const back = (it: Case): Case => {
  const last = it.events.findLastIndex((event, i) => !STAYS.includes(event.type) && (i > 0 || event.type !== 'rig'));
  return last < 0 || it.events[last]?.type === 'handOver' ? it : { ...it, events: it.events.toSpliced(last, 1) };
};
export const canGoBack = (it: Case): boolean => back(it) !== it;

/** The bike that a case stands on: that of its last `rig` event. */
const bikeEvent = ({ events }: Case) => events.findLast((event) => event.type === 'rig');
export const bikeOf = (it: Case): Rig => bikeEvent(it)?.rig ?? {};

/**
 * Whether anything was learnt since the case came here. Two flows that each think it is the other's would otherwise pass
 * a case to and fro for ever.
 */
export const learntHere = ({ events }: Case): boolean =>
  events
    .slice(events.findLastIndex(({ type }) => type === 'handOver') + 1)
    .some(({ type }) => type === 'answer' || type === 'revise' || type === 'repair');

const isNotOurs = ({ open, findings }: Standing): boolean =>
  open.kind === 'onward' && (open.to.goesBack === true || open.to.isIt?.when(findings) === true);

/** What was seen here, or before, that the other flow’s causes do not explain, as far as this one knows them. */
function oddOf({ decided, odd }: Standing): readonly string[] {
  const decision = decided?.decision;
  return decision?.kind === 'hand over' ? [...new Set([...odd, ...(decision.odd ?? [])])] : odd;
}

/**
 * The case handed over to another flow: the bike and every fact that still holds, as a fresh list. Repairs done before
 * have already taken their stale facts away. What was learnt of the bike stays an answer, so that it can be changed, and
 * what another flow had brought and this one did not need goes on with it. `told` is what the verdict tells besides; it
 * is newer than what was answered on the way there. A flow that found that the complaint is the other one's has looked for
 * its own: nobody is sent back there for the answers that sent him there first.
 */
export const handedOver = (it: Case, standing: Standing, flow: string, told: Facts = {}): Case => {
  const odd = oddOf(standing);
  const { cameBy } = standing;
  const by = cameBy.includes(flow) ? cameBy.slice(0, cameBy.indexOf(flow)) : [...cameBy, it.flow];
  return {
    flow,
    events: [
      bikeEvent(it) ?? { type: 'rig', rig: {} },
      ...Object.entries({ ...standing.carried, ...standing.facts, ...told }).map(([step, answer]) => ({
        type: 'answer' as const,
        step,
        answer,
      })),
      ...[...standing.checked].map((step) => ({ type: 'confirm' as const, step })),
      ...standing.notes.map((text) => ({ type: 'note' as const, text })),
      ...it.events.filter(({ type }) => type === 'kept'),
      ...(isNotOurs(standing)
        ? [{ type: 'repair' as const, verdict: elsewhere(it.flow), result: 'not-it' as const }]
        : []),
      { type: 'handOver', flow, ...(odd.length > 0 && { odd }), ...(by.length > 0 && { by }) },
    ],
  };
};
