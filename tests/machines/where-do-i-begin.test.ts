import { describe, expect, it } from 'vitest';
import { elsewhere } from '../../machines/elsewhere.ts';
import { becauseOf, toldBy } from '../../machines/machine.ts';
import { whereDoIBegin } from '../../machines/where-do-i-begin.ts';
import { answered, confirmed, repaired } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { replay } from '../../src/case/replay.ts';
import { late } from '../../src/likelihoods/where-do-i-begin.ts';
import { type Answers, answersByOutcome, caseOn, give, openIn } from '../journey.ts';

/** Whoever has no name for what is wrong is sent to a flow that has one. What callers say first: common practice, no published source. */

const stand = (it: Case) => replay(whereDoIBegin, it, late);
/** Whoever is asked again says the same. */
function settled(it: Case): Case {
  const { open } = stand(it);
  return open.kind === 'doubt' ? settled(confirmed(it, open.step.id)) : it;
}
const endOf = (answers: Answers) => openIn(stand(settled(give(caseOn(whereDoIBegin), answers))));

/** Every way through the questions, with what it ends in. What is asked again counts as another question. */
function waysFrom(it: Case, asked: readonly string[] = []): readonly (readonly [readonly string[], string])[] {
  const standing = stand(it);
  if (standing.open.kind === 'doubt') {
    const { id } = standing.open.step;
    return waysFrom(confirmed(it, id), [...asked, id]);
  }
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
  it('asks again for what all hangs on, before it sends anybody on', () => {
    const again = ways.filter(([asked]) => asked.filter((id) => id === 'what-plays').length === 2);
    expect(again.map(([, end]) => end)).toContain('to no-sound-at-all');
  });
  it('ends in a flow, whatever is answered and though nothing can be', () => {
    for (const [, end] of ways) expect(end).toMatch(/^to /);
  });
  it('can send to every fault flow, and to the plan where nothing may be broken', () => {
    const flows = [...FAULT_FLOWS.map(([id]) => id), 'is-a-reflash-needed'];
    expect(new Set(ways.map(([, end]) => end))).toEqual(new Set(flows.map((id) => `to ${id}`)));
  });
  it.each(['thin', 'quiet'])(
    'sends whoever calls it %s at all times, with all speakers playing, to the plan',
    (sounds) => {
      const endWhen = (when: string | null) =>
        endOf({ 'what-plays': 'all', 'when-wrong': when, 'how-it-sounds': sounds, 'ends-compare': 'none' });
      for (const when of ['always', null]) expect(endWhen(when)).toBe('to is-a-reflash-needed');
      expect(endWhen('running')).toBe('to eq-changes-when-engine-starts');
    },
  );
  it.each([
    [{ 'what-plays': 'all', 'when-wrong': 'always', 'how-it-sounds': 'rough' }, 'distortion-at-volume'],
    [{ 'what-plays': 'all', 'when-wrong': 'always', 'how-it-sounds': 'changes' }, 'eq-changes-when-engine-starts'],
    [{ 'what-plays': 'all', 'when-wrong': 'always', 'how-it-sounds': 'noise' }, 'eq-changes-when-engine-starts'],
  ] as const)('goes by what it sounds like where that is all it knows: %j to %s', (answers, flow) => {
    expect(endOf(answers)).toBe(`to ${flow}`);
  });
  it.each([
    [{ 'what-plays': 'none', 'when-wrong': 'always', 'amp-light': 'normal' }, 'no-sound-at-all'],
    [{ 'what-plays': 'no-rear', 'when-wrong': 'always', 'amp-light': 'normal' }, 'no-rear-sound'],
    [{ 'what-plays': 'some', 'when-wrong': 'always', 'amp-light': 'normal' }, 'one-speaker-or-side-dead'],
    [{ 'what-plays': 'all', 'when-wrong': 'loud', 'amp-light': 'normal' }, 'distortion-at-volume'],
    [{ 'what-plays': 'all', 'when-wrong': 'running', 'amp-light': 'normal' }, 'eq-changes-when-engine-starts'],
    [{ 'what-plays': 'all', 'when-wrong': 'times', 'amp-light': 'fault' }, 'amp-wont-turn-on'],
  ] as const)('sends %j to %s', (answers, flow) => {
    expect(endOf(answers)).toBe(`to ${flow}`);
  });
  it('never sends somebody to an amplifier that he said is not there', () => {
    for (const playing of ['all', 'none', 'no-rear', 'rear-weak', 'no-front', 'some', null])
      for (const when of ['always', 'loud', 'running', 'times', null])
        expect(endOf({ 'what-plays': playing, 'when-wrong': when, 'amp-light': 'no-amp' })).toMatch(/^to (?!amp)/);
  });
  it('takes what comes and goes without an amplifier for a joint on the way to a speaker, silent just not now', () => {
    const { open, findings } = stand(
      give(caseOn(whereDoIBegin), { 'what-plays': 'all', 'when-wrong': 'times', 'amp-light': 'no-amp' }),
    );
    const to = open.kind === 'onward' ? open.to : expect.fail(open.kind);
    expect(to.flow).toBe('one-speaker-or-side-dead');
    expect(toldBy(to, findings)).toMatchObject({
      'which-corner': { option: 'plays' },
      'rear-drive': { option: 'unit' },
      'front-fed': { option: 'unit' },
    });
  });
  it.each([
    [{ 'what-plays': null, 'when-wrong': null, 'amp-light': null }, /^Nothing is known yet\. By how often it happens/],
    [
      { 'what-plays': 'no-rear', 'when-wrong': 'always', 'amp-light': 'normal' },
      /^From what you say it is most like this/,
    ],
    [
      { 'what-plays': 'all', 'when-wrong': 'always', 'amp-light': 'normal' },
      /^What you say points to no one thing.*“Does it need a reflash at all\?”$/,
    ],
  ] as const)('says what it goes by: %j', (answers, words) => {
    const { open, findings } = stand(give(caseOn(whereDoIBegin), answers));
    expect(open.kind === 'onward' && becauseOf(open.to, findings)).toMatch(words);
  });
  // Two sources in and against phase: the sum is nothing in theory, either one alone is whole. That the balance tells, common practice.
  it('has the balance turned before anybody who calls it thin is sent to the plan of a reflash', () => {
    const thin = { 'what-plays': 'all', 'how-it-sounds': 'thin' } as const;
    expect(openIn(stand(give(caseOn(whereDoIBegin), thin)))).toBe('ends-compare?');
    for (const end of ['none', null]) expect(endOf({ ...thin, 'ends-compare': end })).toBe('to is-a-reflash-needed');
    const { open, findings } = stand(give(caseOn(whereDoIBegin), { ...thin, 'ends-compare': 'front' }));
    const to = open.kind === 'onward' ? open.to : expect.fail(open.kind);
    expect(to.flow).toBe('one-speaker-or-side-dead');
    expect(becauseOf(to, findings)).toMatch(/push against each other/);
    expect(toldBy(to, findings)).toMatchObject({ 'which-corner': { option: 'thin' } });
  });
  it('says that it is none of these by itself where thin is not the plan', () => {
    const it = give(caseOn(whereDoIBegin), { 'what-plays': 'all', 'how-it-sounds': 'thin', 'ends-compare': 'none' });
    const denied = stand(repaired(it, elsewhere('is-a-reflash-needed'), 'not-it'));
    expect(denied.open.kind === 'onward' && becauseOf(denied.open.to, denied.findings)).toMatch(
      /^Thin or too quiet at all times is none of these by itself/,
    );
  });
  it('goes on to the next likeliest where somebody says that it is not that', () => {
    const it = give(caseOn(whereDoIBegin), { 'what-plays': 'all', 'when-wrong': 'loud', 'amp-light': 'normal' });
    const denied = repaired(it, elsewhere('distortion-at-volume'), 'not-it');
    expect(openIn(stand(denied))).toMatch(/^to (?!distortion)/);
  });
});
