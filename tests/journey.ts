import { ampWontTurnOn } from '../machines/amp-wont-turn-on.ts';
import type { Late, StagedFlow } from '../machines/machine.ts';
import { noRearSound } from '../machines/no-rear-sound.ts';
import type { Flow } from '../machines/rows.ts';
import { answered } from '../src/case/change.ts';
import type { Case } from '../src/case/events.ts';
import { replay } from '../src/case/replay.ts';
import type { Open, Standing } from '../src/case/standing.ts';
import { late as ampLate } from '../src/likelihoods/amp-wont-turn-on.ts';
import { late as rearLate } from '../src/likelihoods/no-rear-sound.ts';
import type { Rig } from '../src/rig/rig.ts';
import { offered, outcomeOf } from '../src/steps/outcome.ts';
import type { Answer, ReadingStep, Situation, Step } from '../src/steps/step.ts';

/** An answer written short: an option, `null` for "I can't", or readings as typed. */
export type Short = string | null | Readonly<Record<string, string>>;
export type Answers = Readonly<Record<string, Short>>;

export const toAnswer = (short: Short): Answer =>
  short === null ? { cannot: true } : typeof short === 'string' ? { option: short } : { readings: short };

type AnyFlow = StagedFlow | Flow;

/** Starts a case on a bike. */
export const caseOn = (flow: Pick<AnyFlow, 'id'>, rig: Rig = {}): Case => ({
  flow: flow.id,
  events: [{ type: 'rig', rig }],
});

/** The case with these answers, given in this order whatever is open. */
export const give = (it: Case, answers: Answers): Case =>
  Object.entries(answers).reduce((so, [step, short]) => answered(so, step, toAnswer(short)), it);

/** What the pages of the flows fetch late. */
export const LATE: Readonly<Record<string, Late>> = { [noRearSound.id]: rearLate, [ampWontTurnOn.id]: ampLate };

/** Where a case stands, with everything loaded. */
export const stand = (flow: AnyFlow, it: Case): Standing => replay(flow, it, LATE[flow.id]);

/** What is open, written short: the step with a question mark, "again" before a doubted one, or what it ends in. */
export function openIn({ open }: { readonly open: Open }): string {
  switch (open.kind) {
    case 'step':
      return `${open.step.id}?`;
    case 'doubt':
      return `again ${open.step.id}?`;
    case 'cause':
      return open.cause;
    case 'list':
      return open.causes.join(' | ');
    case 'onward':
      return `to ${open.to.flow}`;
    case 'verdict':
      return open.verdict.id;
    case 'waiting':
      return 'waiting';
  }
}

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
  'amp-terminals': { batteryV: ['12.4', '11.2', '15.6'], plusV: ['12.3', '11.0', '4', '0'], groundV: ['0.02', '12.1'] },
  'fuse-sides': { inV: ['12.4', '4', '0'], outV: ['12.4', '4', '0'] },
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

/** The middle of each stretch of the scale of a reading, as it is before any other is there. */
const middles = (step: ReadingStep, name: string, situation: Situation): readonly string[] =>
  (step.bands(name, {}, situation) ?? [])
    .map(({ low, high }) => (low + high) / 2)
    .filter((value) => Number.isFinite(value) && value >= 0)
    .map(String);

function* readingSets(step: ReadingStep, situation: Situation): Generator<Record<string, string>> {
  const names = Object.keys(step.readings).filter((name) => !step.readings[name]?.optional);
  const choices = names.map((name) => {
    const own = OWN[step.id]?.[name] ?? OWN_ANYWHERE[name];
    const typical = own ?? (step.readings[name]?.unit === 'Ω' ? OHMS : VOLTS);
    return [...new Set([...typical, ...middles(step, name, situation)])];
  });
  const sets = choices.reduce<string[][]>((so, list) => so.flatMap((set) => list.map((text) => [...set, text])), [[]]);
  for (const set of sets) yield Object.fromEntries(names.map((name, i) => [name, set[i] ?? '']));
}

const remembered = new Map<string, ReadonlyMap<string, Answer>>();

/** What the meaning of a reading can hang on besides the reading itself. */
const READ_ALONG = ['meter-digit', 'tones-off', 'supply-under-load', 'amp-terminals'];

/** One answer for every outcome that a step can have in a situation, found by trying typical values. */
export function answersByOutcome(step: Step, situation: Situation): ReadonlyMap<string, Answer> {
  if (step.kind !== 'reading') return tryAnswers(step, situation);
  const { rig, facts } = situation;
  const key = JSON.stringify([step.id, rig, READ_ALONG.map((id) => facts[id])]);
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
  for (const readings of readingSets(step, situation)) {
    const outcome = outcomeOf(step, { ...situation, facts: { ...situation.facts, [step.id]: { readings } } });
    if (outcome !== undefined && !found.has(outcome)) found.set(outcome, { readings });
    if (found.size > Object.keys(step.outcomes).length) break;
  }
  return found;
}
