import fc from 'fast-check';
import { expect } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { NOTHING_KNOWN, type Rig } from '../../src/rig/rig.ts';
import { offered } from '../../src/steps/outcome.ts';
import type { Answer, Step } from '../../src/steps/step.ts';

/* Ways through the plan: with answers that a test names, and with answers drawn by chance. */

const { machine, states, steps } = isAReflashNeeded;

/** Readings for each outcome, taken with a meter that shows 0.01 V. */
const READINGS: Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, string>>>>>> = {
  'tones-off': {
    boosted: { v400V: '0.50', v80V: '2.2' },
    flat: { v400V: '0.50', v80V: '0.50' },
    cut: { v400V: '0.50', v80V: '0.20' },
    unclear: { v400V: '0.50', v80V: '1.0' },
  },
  'tones-running': {
    same: { v400V: '0.50', v80V: '0.52' },
    changes: { v400V: '0.50', v80V: '0.90' },
    unclear: { v400V: '0.50', v80V: '0.01' },
  },
  'rear-pair': {
    ok: { frontV: '2', leftV: '2', rightV: '2' },
    uneven: { frontV: '2', leftV: '2', rightV: '1' },
    none: { frontV: '2', leftV: '0', rightV: '0' },
    'one-only': { frontV: '2', leftV: '2', rightV: '0' },
  },
  'top-step': { full: { topV: '7.3' }, lowered: { topV: '3.3' }, unclear: { topV: '5' } },
};

export const answerOf = (step: string, option: string): Answer => {
  if (option === 'cannot') return { cannot: true };
  const readings = READINGS[step]?.[option];
  return readings ? { readings } : { option };
};
const begin = (rig: Rig) => initialTransition(machine, { rig, facts: {} })[0];
type Snapshot = ReturnType<typeof begin>;
export function openStep(snapshot: Snapshot): string {
  const state = states[String(snapshot.value)];
  if (!state || !('ask' in state)) throw new Error(`${snapshot.value} asks nothing`);
  return state.ask.id;
}
export const give = (snapshot: Snapshot, option: string): Snapshot => {
  const step = openStep(snapshot);
  return transition(machine, snapshot, { type: 'answer', step, answer: answerOf(step, option) })[0];
};

/** What most bikes have, for journeys that do not turn on it. */
const USUAL: Readonly<Record<string, string>> = {
  'delivered-amp': 'no',
  'front-ohms': '4',
  'rear-ohms': '4',
  'worse-how': 'other',
};

/** Walks with these answers. An answer that is missing, or that was never asked for, fails the test. */
export function walk(answers: Readonly<Record<string, string>>, rig: Rig = NOTHING_KNOWN) {
  let snapshot = begin(rig);
  const asked: string[] = [];
  while (snapshot.status !== 'done') {
    const step = openStep(snapshot);
    const option = answers[step] ?? USUAL[step];
    if (option === undefined) throw new Error(`no answer for ${step}, after ${asked.join(', ')}`);
    asked.push(step);
    snapshot = give(snapshot, option);
  }
  expect(Object.keys(answers).filter((step) => !asked.includes(step))).toEqual([]);
  const { verdict, remedy } = snapshot.output;
  return { verdict, remedy, asked, text: JSON.stringify(remedy) };
}

export const factory = { 'wish-mirroring': 'no', 'unit-kind': 'factory' };
export const noAmp = { ...factory, 'amp-count': '0' };
export const oneAmp = { ...factory, 'amp-count': '1', 'amp-kind': 'add-on' };
export const wireAmp = { ...oneAmp, 'amp-turn-on': 'wire', 'amp-needs': 'any', 'wish-same-eq': 'no' };
export const listeningAmp = { ...oneAmp, 'amp-turn-on': 'signal', 'amp-needs': 'unaltered', 'wish-same-eq': 'no' };
export const twoAmps = { 'amp-count': '2', 'amp-layout': 'front-rear' };
export const never = { 'profile-source': 'never', 'delivered-with': 'two' };
export const measured = { 'profile-source': 'measure', 'meter-digit': '0.01' };
export const paper = (rear: string, lowered: string, boosted: string, sameEq: string) => ({
  'profile-source': 'record',
  'paper-rear': rear,
  'paper-lowered': lowered,
  'paper-boosted': boosted,
  'paper-same-eq': sameEq,
});
export const AMPLIFIED_SAME = paper('yes', 'yes', 'no', 'yes');
export const AMPLIFIED_CHANGES = paper('yes', 'yes', 'no', 'no');

/** A route with answers drawn by chance: where it stood, what was asked, and where it ended. */
function wander(draw: (from: readonly string[]) => string, rig: Rig) {
  let snapshot = begin(rig);
  const visited = [String(snapshot.value)];
  const asked: string[] = [];
  while (snapshot.status !== 'done') {
    const step = openStep(snapshot);
    if (asked.includes(step)) throw new Error(`${step} is asked twice, after ${asked.join(', ')}`);
    asked.push(step);
    const open = steps.get(step) as Step;
    const options = READINGS[step]
      ? Object.keys(READINGS[step])
      : offered(open, snapshot.context).map(([option]) => option);
    const option = step === 'meter-digit' ? '0.01' : draw([...options, 'cannot']);
    snapshot = give(snapshot, option);
    visited.push(String(snapshot.value));
  }
  return { visited, asked, rig: snapshot.context.rig, ...snapshot.output };
}

const SAVED: Rig = {
  ...EXAMPLE_RIGS['fork-fairing'],
  profileRead: { on: '2026-05-03', answers: { 'meter-digit': { option: '0.01' } } },
};
const rigs = fc.constantFrom<Rig>(NOTHING_KNOWN, NOTHING_KNOWN, SAVED, ...Object.values(EXAMPLE_RIGS));
const routes = fc
  .tuple(fc.infiniteStream(fc.nat({ max: 999 })), rigs)
  .map(([chance, rig]) => wander((from) => from[(chance.next().value ?? 0) % from.length] ?? 'cannot', rig));
export const SAMPLE = fc.sample(routes, { numRuns: 4000, seed: 7 });
