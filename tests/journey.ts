import type { Flow } from '../machines/rows.ts';
import { answered } from '../src/case/change.ts';
import type { Case } from '../src/case/events.ts';
import { replay, type Standing } from '../src/case/replay.ts';
import type { Rig } from '../src/rig/rig.ts';
import { type Findings, offered, outcomeOf } from '../src/steps/outcome.ts';
import type { Answer, ReadingStep, Situation, Step } from '../src/steps/step.ts';
import { ampTable } from '../src/verdicts/amp/suspects.ts';
import type { TableFor } from '../src/verdicts/made-table.ts';
import { rearTable } from '../src/verdicts/rear/suspects.ts';
import type { Remedy, Verdict } from '../src/verdicts/verdict.ts';

/** An answer written short: an option, `null` for "I can't", or readings as typed. */
export type Short = string | null | Readonly<Record<string, string>>;

export const toAnswer = (short: Short): Answer =>
  short === null ? { cannot: true } : typeof short === 'string' ? { option: short } : { readings: short };

/** Starts a case on a bike. */
export const caseOn = (flow: Flow, rig: Rig = {}): Case => ({ flow: flow.id, events: [{ type: 'rig', rig }] });

/** Answers the steps of a list in its order and gives where the case then stands. */
export const after = (flow: Flow, rig: Rig, answers: Readonly<Record<string, Short>>): Standing =>
  replay(
    flow,
    Object.entries(answers).reduce((it, [step, short]) => answered(it, step, toAnswer(short)), caseOn(flow, rig)),
  );

const TABLES: Readonly<Record<string, TableFor>> = { 'no-rear-sound': rearTable, 'amp-wont-turn-on': ampTable };

/** What the page shows at a verdict: a list of those who are left is ranked by the table of the flow. */
export const remedyShown = ({ id }: Flow, verdict: Verdict, findings: Findings): Remedy =>
  verdict.remedy(findings, TABLES[id]?.(findings).suspects);

/** The verdict that a list of answers ends in, or the step that is still open, with a question mark. */
export const endOf = (flow: Flow, rig: Rig, answers: Readonly<Record<string, Short>>): string => {
  const { open } = after(flow, rig, answers);
  return 'step' in open ? `${open.step.id}?` : open.verdict.id;
};

const VOLTS = ['0', '0.003', '0.3', '0.6', '0.9', '1.1', '2', '4.5', '6', '7.5', '12'];
const OHMS = ['0.2', '0.9', '3.3', '4.9', '12', '300', '5000', 'OL'];
const DC = ['0', '3.4', '6.2', '12.4'];
/** Readings that typical volts do not cover, so that every outcome is found within few tries. */
const OWN_ANYWHERE: Readonly<Record<string, readonly string[]>> = {
  leadsOhm: ['0.2'],
  batteryV: ['12.4'],
  residueV: ['0.05'],
};
const OWN: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  'half-supply': { plusV: DC, minusV: DC },
  'sense-dc': { plusV: DC, minusV: DC },
  'amp-terminals': { batteryV: ['12.4', '11.2', '15.6'], plusV: ['12.3', '11.0', '0'], groundV: ['0.02', '12.1'] },
  'fuse-sides': { inV: ['12.4', '0'], outV: ['12.4', '0'] },
  'supply-under-load': {
    batteryV: ['12.2', '11.2'],
    ampV: ['12.15', '12', '9.2', '11.15'],
    plusDropV: ['0.03', '0.15', '3'],
    groundDropV: ['0.01', '0.05', '3'],
  },
  'plus-path': { ringV: ['0.02', '2.8'], holderV: ['0.02', '2.8'] },
  'remote-volts': { remoteV: ['12.2', '10.5', '6', '0'] },
  'remote-source': { startV: ['12.2', '6', '0'] },
  'remote-key-off': { remoteV: ['0', '12.3'] },
  'sense-level': { usualV: ['0', '0.03', '0.3', '1.5'], loudV: ['0', '3'] },
  'amp-dc': { highestV: ['0.01', '0.1', '3'] },
};

function* readingSets(step: ReadingStep): Generator<Record<string, string>> {
  const names = Object.keys(step.readings).filter((name) => !step.readings[name]?.optional);
  const choices = names.map((name) => {
    const own = OWN[step.id]?.[name] ?? OWN_ANYWHERE[name];
    return own ?? (step.readings[name]?.unit === 'Ω' ? OHMS : VOLTS);
  });
  const sets = choices.reduce<string[][]>((so, list) => so.flatMap((set) => list.map((text) => [...set, text])), [[]]);
  for (const set of sets) yield Object.fromEntries(names.map((name, i) => [name, set[i] ?? '']));
}

const remembered = new Map<string, ReadonlyMap<string, Answer>>();

/** One answer for every outcome that a step can have in a situation, found by trying typical values. */
export function answersByOutcome(step: Step, situation: Situation): ReadonlyMap<string, Answer> {
  if (step.kind !== 'reading') return tryAnswers(step, situation);
  const { rig, facts } = situation;
  const key = JSON.stringify([step.id, rig, facts['meter-digit'], facts['tones-off']]);
  const known = remembered.get(key) ?? tryAnswers(step, situation);
  remembered.set(key, known);
  return known;
}

function tryAnswers(step: Step, situation: Situation): ReadonlyMap<string, Answer> {
  const found = new Map<string, Answer>([['cannot', { cannot: true }]]);
  if (step.kind !== 'reading') {
    for (const [option] of offered(step, situation)) found.set(option, { option });
    return found;
  }
  for (const readings of readingSets(step)) {
    const outcome = outcomeOf(step, { ...situation, facts: { ...situation.facts, [step.id]: { readings } } });
    if (outcome !== undefined && !found.has(outcome)) found.set(outcome, { readings });
    if (found.size > Object.keys(step.outcomes).length) break;
  }
  return found;
}

/** Runs a flow to its end, choosing the outcome of each step, and gives the last standing. */
export function run(
  flow: Flow,
  rig: Rig,
  choose: (step: Step, outcomes: readonly string[], soFar: Standing) => string,
) {
  let it = caseOn(flow, rig);
  for (let i = 0; i < 60; i++) {
    const standing = replay(flow, it);
    if (!('step' in standing.open)) return { standing, case: it };
    const { step } = standing.open;
    const answers = answersByOutcome(step, standing);
    const answer = answers.get(choose(step, [...answers.keys()], standing));
    if (!answer) throw new Error(`${step.id} has no such outcome`);
    it = answered(it, step.id, answer);
  }
  throw new Error(`${flow.id} did not end within 60 answers`);
}
