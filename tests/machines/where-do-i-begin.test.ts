import { describe, expect, it } from 'vitest';
import { elsewhere } from '../../machines/machine.ts';
import { whereDoIBegin } from '../../machines/where-do-i-begin.ts';
import { answered, repaired } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { replay } from '../../src/case/replay.ts';
import { late } from '../../src/likelihoods/where-do-i-begin.ts';
import { type Answers, answersByOutcome, caseOn, give, openIn } from '../journey.ts';

/** Whoever has no name for what is wrong is sent to a flow that has one. What callers say first: common practice, no published source. */

const stand = (it: Case) => replay(whereDoIBegin, it, late);
const after = (answers: Answers) => openIn(stand(give(caseOn(whereDoIBegin), answers)));

/** Every way through the questions, with what it ends in. */
function waysFrom(it: Case, asked: readonly string[] = []): readonly (readonly [readonly string[], string])[] {
  const standing = stand(it);
  if (standing.open.kind !== 'step') return [[asked, openIn(standing)]];
  const { step } = standing.open;
  const answers = [...answersByOutcome(step, standing).values(), { cannot: true } as const];
  return answers.flatMap((answer) => waysFrom(answered(it, step.id, answer), [...asked, step.id]));
}
const ways = waysFrom(caseOn(whereDoIBegin));

describe('the intake', () => {
  it('asks three questions at most, and no tool for any of them', () => {
    for (const [asked] of ways) expect(asked.length).toBeLessThanOrEqual(3);
    for (const step of whereDoIBegin.steps.values()) expect(['none', 'ears']).toContain(step.tool);
  });
  it('ends in a flow, whatever is answered and though nothing can be', () => {
    for (const [, end] of ways) expect(end).toMatch(/^to /);
  });
  it('can send to every fault flow', () => {
    expect(new Set(ways.map(([, end]) => end))).toEqual(new Set(FAULT_FLOWS.map(([id]) => `to ${id}`)));
  });
  it.each([
    [{ 'what-plays': 'none', 'when-wrong': 'always', 'amp-light': 'normal' }, 'no-sound-at-all'],
    [{ 'what-plays': 'no-rear', 'when-wrong': 'always', 'amp-light': 'normal' }, 'no-rear-sound'],
    [{ 'what-plays': 'some', 'when-wrong': 'always', 'amp-light': 'normal' }, 'one-speaker-or-side-dead'],
    [{ 'what-plays': 'all', 'when-wrong': 'loud', 'amp-light': 'normal' }, 'distortion-at-volume'],
    [{ 'what-plays': 'all', 'when-wrong': 'running', 'amp-light': 'normal' }, 'eq-changes-when-engine-starts'],
    [{ 'what-plays': 'all', 'when-wrong': 'times', 'amp-light': 'fault' }, 'amp-wont-turn-on'],
  ] as const)('sends %j to %s', (answers, flow) => {
    expect(after(answers)).toBe(`to ${flow}`);
  });
  it('goes on to the next likeliest where somebody says that it is not that', () => {
    const it = give(caseOn(whereDoIBegin), { 'what-plays': 'all', 'when-wrong': 'loud', 'amp-light': 'normal' });
    const denied = repaired(it, elsewhere('distortion-at-volume'), 'not-it');
    expect(openIn(stand(denied))).toMatch(/^to (?!distortion)/);
  });
});
