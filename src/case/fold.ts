import type { Late } from '../../machines/machine.ts';
import { failsRatio } from '../causes/repair-action.ts';
import type { Repaired } from '../inference/posterior.ts';
import type { Rig } from '../rig/rig.ts';
import { dropDeniers, dropDependents } from '../steps/given-under.ts';
import { findingsOver } from '../steps/outcome.ts';
import { type Answer, EVERY_PART, type Facts, type Part, type Step } from '../steps/step.ts';
import { type About, thingOf } from '../steps/subject.ts';
import type { CaseEvent } from './events.ts';

/** What the events of a case come to. */
export interface Folded {
  readonly rig: Rig;
  readonly facts: Facts;
  /** Steps whose answers came with a hand-over. */
  readonly brought: ReadonlySet<string>;
  readonly checked: ReadonlySet<string>;
  /** Doubted answers that could not be given once more. */
  readonly left: ReadonlySet<string>;
  /** How many answers were to be given once more since the last repair. */
  readonly askedAgain: number;
  readonly repairs: readonly Repaired[];
  readonly cured: string | undefined;
  readonly notes: readonly string[];
  /** Of what another flow asked and this one does not, what nobody could explain there. */
  readonly odd: readonly string[];
  /** The flows that the case came through. */
  readonly cameBy: readonly string[];
  /** Whether anything was learnt since the case came from another flow. */
  readonly learnt: boolean;
}

type Steps = ReadonlyMap<string, Step>;

/** Drops what a repair may have altered. What a step of another flow observes is not known here, so that goes as well. */
function dropMended(mends: readonly Part[], facts: Map<string, Answer>, steps: Steps): void {
  for (const id of facts.keys())
    if ((steps.get(id)?.observes ?? EVERY_PART).some((part) => mends.includes(part))) facts.delete(id);
}

/**
 * What another flow asked of a thing by its name, this one may ask of it as the silent one, or the other way round: it is
 * the same answer. Gives the keys that are now called otherwise.
 */
function callAsHere(facts: Map<string, Answer>, rig: Rig, steps: Steps): ReadonlyMap<string, string> {
  const called = new Map<string, string>();
  const here = Map.groupBy(steps.values(), ({ about }) => about?.step);
  const situation = { rig, facts: Object.fromEntries(facts) };
  for (const [key, answer] of [...facts]) {
    const [name, subject] = key.split('@', 2);
    const same = steps.has(key)
      ? undefined
      : here.get(name)?.find(({ id, about }) => {
          const thing = about && thingOf(about, about.subject, situation);
          return thing !== undefined && thing === thingOf(about as About, subject, situation) && !facts.has(id);
        });
    if (!same) continue;
    facts.delete(key);
    facts.set(same.id, answer);
    called.set(key, same.id);
  }
  return called;
}

/** How often a check that clears a cause is wrong. An estimate. */
const CHECK_ERRS_RATIO = 0.05;

/** Folds all events, in order, in linear time. What follows from them is decided afterwards, once. */
export function fold(events: readonly CaseEvent[], steps: Steps, late: Late | undefined): Folded {
  const facts = new Map<string, Answer>();
  const checked = new Set<string>();
  const left = new Set<string>();
  let brought: ReadonlySet<string> = new Set();
  let [odd, cameBy]: [readonly string[], readonly string[]] = [[], []];
  const repairs: Repaired[] = [];
  const notes: string[] = [];
  let [rig, cured, askedAgain, learnt]: [Rig, string | undefined, number, boolean] = [{}, undefined, 0, true];
  for (const event of events) {
    switch (event.type) {
      case 'rig':
        rig = event.rig;
        break;
      case 'answer':
        facts.set(event.step, event.answer);
        [cured, learnt] = [undefined, true];
        break;
      case 'revise':
        dropDependents(event.step, facts, steps);
        facts.set(event.step, event.answer);
        checked.add(event.step);
        askedAgain += 1;
        [cured, learnt] = [undefined, true];
        break;
      case 'confirm':
        dropDeniers(event.step, facts, steps);
        if (event.answer) facts.set(event.step, event.answer);
        checked.add(event.step);
        askedAgain += 1;
        break;
      case 'leave':
        left.add(event.step);
        askedAgain += 1;
        break;
      case 'repair': {
        if (event.result === 'not-it') {
          repairs.push({ cause: event.verdict, failsRatio: CHECK_ERRS_RATIO, result: event.result });
          learnt = true;
          break;
        }
        // A link can name anything: what every object has is no cause.
        const cause = late && Object.hasOwn(late.causes, event.verdict) ? late.causes[event.verdict] : undefined;
        if (!cause) break;
        [cured, learnt] = [undefined, true];
        const findings = findingsOver(steps)({ rig, facts: Object.fromEntries(facts) });
        const actions = cause.remedy(findings).repair;
        repairs.push({ cause: cause.id, failsRatio: failsRatio(actions), result: event.result ?? 'still' });
        dropMended(cause.mends, facts, steps);
        for (const again of [checked, left]) for (const id of again) if (!facts.has(id)) again.delete(id);
        askedAgain = 0;
        break;
      }
      case 'cured':
        cured = event.verdict;
        break;
      case 'note':
        notes.push(event.text);
        break;
      case 'handOver':
        for (const [was, is] of callAsHere(facts, rig, steps))
          for (const again of [checked, left]) if (again.delete(was)) again.add(is);
        brought = new Set(facts.keys());
        [odd, cameBy] = [event.odd ?? [], event.by ?? []];
        [learnt, askedAgain] = [false, 0];
        break;
    }
  }
  return {
    rig,
    facts: Object.fromEntries(facts),
    brought,
    checked,
    left,
    askedAgain,
    repairs,
    cured,
    notes,
    odd: odd.filter((id) => facts.has(id) && !steps.has(id)),
    cameBy,
    learnt,
  };
}
