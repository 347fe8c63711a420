import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { adopt } from '../../src/case/adopt.ts';
import type { CaseEvent } from '../../src/case/events.ts';
import { isStaged, replay } from '../../src/case/replay.ts';
import { late } from '../../src/likelihoods/no-rear-sound.ts';
import { anyCase } from './any-case.ts';

const RIG: CaseEvent = { type: 'rig', rig: { unitKind: 'factory' } };
const NOTE: CaseEvent = { type: 'note', text: 'kept' };
const adopted = (...events: CaseEvent[]) =>
  adopt(noRearSound, { flow: noRearSound.id, events: [RIG, ...events, NOTE] });
const rest = (events: readonly CaseEvent[]) => events.slice(1, -1);

describe('a case of today', () => {
  const events: CaseEvent[] = [
    { type: 'answer', step: 'fader-centre', answer: { option: 'no-change' } },
    { type: 'answer', step: 'rear-pair', answer: { readings: { frontV: 'loud' } } },
    { type: 'revise', step: 'fader-centre', answer: { cannot: true } },
    { type: 'leave', step: 'fader-centre' },
    { type: 'repair', verdict: 'coil-open', result: 'better' },
    { type: 'repair', verdict: 'elsewhere: amp-wont-turn-on', result: 'not-it' },
    { type: 'cured', verdict: 'coil-open' },
    { type: 'handOver', flow: 'is-a-reflash-needed' },
  ];
  it('is taken over whole, with readings as they were typed', () => {
    expect(adopted(...events)).toEqual({ case: { flow: noRearSound.id, events: [RIG, ...events, NOTE] }, refused: [] });
  });
});

describe('what a flow of today cannot use', () => {
  it.each<[string, CaseEvent, RegExp]>([
    [
      'a step that it has not',
      { type: 'answer', step: 'horn', answer: { cannot: true } },
      /^An answer to “horn” was left out: this flow has no such step\.$/,
    ],
    [
      'a change of such a step',
      { type: 'revise', step: 'horn', answer: { option: 'loud' } },
      /“horn”.* no such step\.$/,
    ],
    [
      'an option that it has not',
      { type: 'answer', step: 'fader-centre', answer: { option: 'maybe' } },
      /^The answer to “Fader and balance in the middle” was left out: it is not one of today’s answers\.$/,
    ],
    [
      'an option named like a part of every object',
      { type: 'answer', step: 'fader-centre', answer: { option: 'constructor' } },
      /not one of today’s answers/,
    ],
    [
      'readings where an option is asked',
      { type: 'answer', step: 'fader-centre', answer: { readings: { v: '1' } } },
      /not one of today’s answers/,
    ],
    [
      'an option where readings are asked',
      { type: 'answer', step: 'rear-pair', answer: { option: 'ok' } },
      /“Rear pairs at the head unit”.*today’s answers/,
    ],
    [
      'a reading that the step has not',
      { type: 'answer', step: 'rear-pair', answer: { readings: { frontV: '2', gear: '5' } } },
      /today’s answers/,
    ],
    [
      'a repair after a verdict that it has not',
      { type: 'repair', verdict: 'horn-broken' },
      /^A repair after “horn-broken” was left out: this flow has no such verdict\.$/,
    ],
    ['a cure of such a verdict', { type: 'cured', verdict: 'horn-broken' }, /no such verdict\.$/],
  ])('%s is left out with a sentence, and the rest is kept', (_, event, says) => {
    const { case: it_, refused } = adopted(event);
    expect(it_.events).toEqual([RIG, NOTE]);
    expect(refused).toHaveLength(1);
    expect(refused[0]).toMatch(says);
  });
  it('is told in one sentence for each reason, however much it is', () => {
    const repair: CaseEvent = { type: 'repair', verdict: 'horn-broken' };
    const horn: CaseEvent = { type: 'answer', step: 'horn', answer: { cannot: true } };
    const maybe: CaseEvent = { type: 'answer', step: 'fader-centre', answer: { option: 'maybe' } };
    const known: CaseEvent = { type: 'repair', verdict: 'coil-open' };
    const { case: it_, refused } = adopted(repair, horn, maybe, known, repair, horn, horn, maybe);
    expect(rest(it_.events)).toEqual([known]);
    expect(refused).toEqual([
      '3 answers were left out: this flow has no such steps.',
      '2 answers were left out: they are not among today’s answers.',
      '2 repairs were left out: this flow has no such verdicts.',
    ]);
  });
});

describe('a repair of an earlier version', () => {
  it.each([
    ['no-rear-sound', noRearSound, 'replaced-unit-adapter-gap', 'adapter-without-rear'],
    ['amp-wont-turn-on', ampWontTurnOn, 'replaced-unit-adapter-gap', 'adapter-without-remote'],
    ['amp-wont-turn-on', ampWontTurnOn, 'amp-load-too-low', 'load-too-low'],
    ['amp-wont-turn-on', ampWontTurnOn, 'main-fuse-open', 'main-fuse-open'],
  ])('in %s follows the one cause that took its verdict over', (_, flow, then, now) => {
    const of = (verdict: string): CaseEvent[] => [
      { type: 'repair', verdict, result: 'better' },
      { type: 'cured', verdict },
    ];
    expect(adopt(flow, { flow: flow.id, events: of(then) })).toEqual({
      case: { flow: flow.id, events: of(now) },
      refused: [],
    });
  });
  it.each(['battery-low', 'wire-chafed', 'amp-short-list', 'constructor', '__proto__'])(
    'that is now several causes, or none, is left out with a sentence: %s',
    (verdict) => {
      const { case: it_, refused } = adopt(ampWontTurnOn, {
        flow: ampWontTurnOn.id,
        events: [{ type: 'repair', verdict }],
      });
      expect(it_.events).toEqual([]);
      expect(refused).toEqual([`A repair after “${verdict}” was left out: this flow has no such verdict.`]);
    },
  );
});

describe('a case of another flow', () => {
  it('becomes one of this flow, with the answers to questions that both ask', () => {
    const { case: it_, refused } = adopt(whatIsInTheHeadUnit, {
      flow: noRearSound.id,
      events: [
        RIG,
        { type: 'answer', step: 'meter-digit', answer: { option: '0.01' } },
        { type: 'answer', step: 'fader-centre', answer: { option: 'no-change' } },
        { type: 'repair', verdict: 'coil-open' },
      ],
    });
    expect(it_).toEqual({
      flow: 'what-is-in-the-head-unit',
      events: [RIG, { type: 'answer', step: 'meter-digit', answer: { option: '0.01' } }],
    });
    expect(refused).toHaveLength(2);
  });
});

describe('any case', () => {
  it.each([noRearSound, isAReflashNeeded, whatIsInTheHeadUnit])('can be replayed in $id once it is adopted', (flow) => {
    fc.assert(
      fc.property(anyCase, (it_) => {
        const { case: usable, refused } = adopt(flow, it_);
        const leftOut = it_.events.length - usable.events.length;
        expect(refused.length).toBeLessThanOrEqual(Math.min(3, leftOut));
        expect(refused.length > 0).toBe(leftOut > 0);
        expect(usable.flow).toBe(flow.id);
        expect(adopt(flow, usable)).toEqual({ case: usable, refused: [] });
        const { state, open } = replay(flow, usable, isStaged(flow) ? late : undefined);
        expect(state).not.toBe('');
        expect(open.kind).not.toBe('waiting');
      }),
    );
  });
});
