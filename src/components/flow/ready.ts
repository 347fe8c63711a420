import type { Case } from '../../case/events.ts';
import type { CautionId } from '../../steps/cautions.ts';
import { cautionsOfCondition, cautionsOfStep } from '../../steps/cautions-of.ts';
import { onThisBike } from '../../steps/concerns.ts';
import {
  type ConditionKey,
  conditionOf,
  engineStopped,
  keyOff,
  nameOf,
  stopsEngine,
  toDo,
  turnsKeyOff,
  undoOf,
  wordsOf,
} from '../../steps/conditions.ts';
import type { Place, Situation, Step } from '../../steps/step.ts';
import { isUnfused } from '../../steps/supply/unfused.ts';
import { SHORT_NAMES } from '../caution/short-names.ts';
import { byWord } from '../caution/signal-words.ts';
import { SPOKEN } from '../caution/spoken.ts';
import { CONDITION_NAMES } from './condition-names.ts';
import { isEndedBy } from './ended-by.ts';
import { misheard } from './misheard.ts';

/** What has to be done before a question makes sense, after what was done for those before it. */
interface ToDo {
  /** Whether an engine runs that the step has no use for, or that it starts itself. */
  readonly stopEngine: boolean;
  /** What was opened for an earlier step and is not needed any more: first it goes back together. */
  readonly putBack: readonly ConditionKey[];
  /** To be brought about now, in this order. */
  readonly next: readonly ConditionKey[];
  /** Needed, and there already. */
  readonly standing: readonly ConditionKey[];
  /** All that is left standing of what was done before: what is to be careful of with it was said. */
  readonly stood: readonly ConditionKey[];
}

/** The steps that were done since the last repair or hand-over, in the order of the day: before it, nothing stands. */
function doneLately({ events }: Case, steps: ReadonlyMap<string, Step>): readonly Step[] {
  const since = events.findLastIndex(
    (event) => event.type === 'handOver' || (event.type === 'repair' && event.result !== 'not-it'),
  );
  return events.slice(since + 1).flatMap((event) => {
    const done = (event.type === 'answer' || event.type === 'revise') && !('cannot' in event.answer);
    return done || event.type === 'confirm' ? (steps.get(event.step) ?? []) : [];
  });
}

const IN_PLACE_OF_A_FUSE: readonly string[] = ['lamp-for-fuse', 'lamp-on'];
const subjectIn = (id: ConditionKey): string => id.slice(nameOf(id).length);
/** No fuse goes back in before the lamp that replaces it. */
const isReplaced = (id: ConditionKey, conditions: readonly ConditionKey[]): boolean =>
  nameOf(id) === 'fuse-out' &&
  conditions.some((other) => IN_PLACE_OF_A_FUSE.includes(nameOf(other)) && subjectIn(other) === subjectIn(id));

const ONLY_ASKED: readonly Place[] = ['fitted', 'told', 'tools', 'plan', 'ears'];
/** Whether hands are laid on the bike for it: what is only told or read off a paper leaves all as it is. */
const isDoneAtTheBike = ({ conditions = [], observes, tool, place }: Step): boolean =>
  conditions.length > 0 || (observes.length > 0 && tool === 'none' && !ONLY_ASKED.includes(place));

/**
 * What stands open and a step has no use for: it needs the rest of the bike whole, unless it never touches the bike. The
 * battery negative goes back on after all the rest.
 */
function leftOpen(step: Step, stands: readonly ConditionKey[]): readonly ConditionKey[] {
  const { conditions = [] } = step;
  if (!isDoneAtTheBike(step)) return [];
  const open = stands.filter(
    (id) =>
      conditionOf(id).opens &&
      conditionOf(id).undo !== undefined &&
      !conditions.includes(id) &&
      !isReplaced(id, conditions),
  );
  return open.toSorted((a, b) => Number(a === 'minus-off') - Number(b === 'minus-off'));
}

/** Whether a step is begun at a running engine. */
const isAtEngine = (step: Step, situation: Situation): boolean =>
  step.conditions?.includes('engine-running') === true && !isEndedBy('engine-running', step, situation);

/** Whether an engine runs that a step does not begin with. */
const hasToStop = (step: Step, stands: readonly ConditionKey[], situation: Situation): boolean =>
  stands.includes('engine-running') && isDoneAtTheBike(step) && !isAtEngine(step, situation);

const without = (stands: readonly ConditionKey[], gone: readonly ConditionKey[]) =>
  stands.filter((id) => !gone.includes(id));

/** What has to be done before a step of a case. */
export const toDoFor = (step: Step, it: Case, steps: ReadonlyMap<string, Step>, situation: Situation): ToDo =>
  toDoAfter(doneLately(it, steps), step, situation);

/** The same after the steps that were done. */
function toDoAfter(done: readonly Step[], step: Step, situation: Situation): ToDo {
  const keptFor = (other: Step, so: readonly ConditionKey[]) => {
    const open = leftOpen(other, so);
    const kept = without(so, open);
    if (open.some((id) => turnsKeyOff(undoOf(id, situation) ?? ''))) return keyOff(kept);
    return hasToStop(other, so, situation) ? engineStopped(kept) : kept;
  };
  const stands = done.reduce<readonly ConditionKey[]>(
    (so, other) => toDo(other.conditions ?? [], keptFor(other, so), situation).stands,
    [],
  );
  const whole = keptFor(step, stands);
  const { next } = toDo(step.conditions ?? [], whole, situation);
  return {
    stopEngine: hasToStop(step, stands, situation),
    putBack: leftOpen(step, stands),
    next,
    stood: whole,
    standing: (step.conditions ?? []).filter((id) => whole.includes(id) && !next.includes(id)),
  };
}

const AND = new Intl.ListFormat('en-GB', { type: 'conjunction' });
/** What was read in full before, in few words. */
export const asBefore = (ids: readonly CautionId[]): string =>
  `Same as before: ${AND.format(ids.flatMap((id) => SHORT_NAMES[id] ?? []))}.`;

/** All that is said of care at a step where nothing stands yet. */
const cautionsAt = (step: Step, situation: Situation): readonly CautionId[] => [
  ...(step.conditions ?? []).flatMap(cautionsOfCondition),
  ...cautionsOfStep(step, situation),
];

/** What has to be done before a question, in words. */
export interface Ready {
  readonly bike: readonly string[];
  readonly phone: readonly string[];
  /** What stands already and stays so, by its name. */
  readonly standing: readonly string[];
  /** What stands once that is done, and stays so, by its name. */
  readonly brought: readonly string[];
  /** What to be careful of, each once: not again while the condition stands that said it. */
  readonly cautions: readonly CautionId[];
  /** Of them, what to be careful of with the step itself, once all before it is done. */
  readonly own: readonly CautionId[];
  /** Of them, what was read in full at an earlier question and cannot maim: its name will do. */
  readonly readBefore: readonly CautionId[];
  /** The same as it is said to a caller. */
  readonly care: readonly string[];
  /** What is easily misheard of the answer, and how to check it. */
  readonly misheard?: string;
}

/** What takes the main fuse out: where there is none, the lead comes off the battery instead. */
const AT_THE_FUSE: readonly string[] = ['fuse-out', 'lamp-for-fuse', 'lamp-on'];
/** Until a lead that has no fuse has one, that is said before anything else. */
const ofUnfused = (next: readonly ConditionKey[], { facts }: Situation): readonly CautionId[] => {
  if (!isUnfused(facts)) return [];
  return next.some((id) => AT_THE_FUSE.includes(nameOf(id))) ? ['no-fuse', 'minus-first', 'battery-gas'] : ['no-fuse'];
};

/** Where what is done next begins with the key off, or the step itself turns the key, the bare sentence says nothing. */
const withoutBareKey = (next: readonly ConditionKey[], step: Step, situation: Situation): readonly ConditionKey[] =>
  next.filter((id, i) => {
    if (id !== 'key-off') return true;
    const then = next[i + 1];
    return then === undefined ? !isEndedBy(id, step, situation) : !wordsOf(then, situation).bike.startsWith('Key off.');
  });

export function readyFor(step: Step, it: Case, steps: ReadonlyMap<string, Step>, situation: Situation): Ready {
  const done = doneLately(it, steps);
  const { stopEngine, putBack, next, standing, stood } = toDoAfter(done, step, situation);
  const undone = putBack.flatMap((id) => undoOf(id, situation) ?? []);
  const said = withoutBareKey(next, step, situation);
  const isEnded = (id: ConditionKey) => isEndedBy(nameOf(id), step, situation);
  const atEngine = isAtEngine(step, situation);
  const toBringAbout = (id: ConditionKey) =>
    (isEnded(id) && conditionOf(id).inStep) || (atEngine && conditionOf(id).atEngine) || wordsOf(id, situation);
  const inOrder = (lines: readonly string[]) =>
    stopEngine && !stopsEngine(lines[0] ?? '') ? ['Engine off.', ...lines] : lines;
  const names = (ids: readonly ConditionKey[]) =>
    ids.flatMap((id) => (isEnded(id) ? [] : [CONDITION_NAMES[nameOf(id)]]));
  const before = stood.flatMap(cautionsOfCondition);
  const now = (ids: readonly CautionId[]) => onThisBike(ids, situation.rig).filter((id) => !before.includes(id));
  const ofStep = cautionsOfStep(step, situation);
  const cautions = now([...ofUnfused(next, situation), ...next.flatMap(cautionsOfCondition), ...ofStep]);
  const read = new Set(done.flatMap((other) => cautionsAt(other, situation)));
  const readBefore = cautions.filter((id) => SHORT_NAMES[id] !== undefined && read.has(id));
  const inFull = byWord(cautions.filter((id) => !readBefore.includes(id)));
  return {
    bike: inOrder([...undone, ...said.map((id) => toBringAbout(id).bike)]),
    phone: inOrder([...undone, ...said.map((id) => toBringAbout(id).phone)]),
    standing: names(standing),
    brought: names(said),
    cautions,
    own: now(ofStep),
    readBefore,
    misheard: misheard(step, situation),
    care: [
      ...inFull.flatMap(([, ids]) => ids.map((id) => SPOKEN[id])),
      ...(readBefore.length > 0 ? [asBefore(readBefore)] : []),
    ],
  };
}
