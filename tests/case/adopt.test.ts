import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { adopt } from '../../src/case/adopt.ts';
import { fromText, pack, toText } from '../../src/case/case-text.ts';
import { answered, back, handedOver, onBike } from '../../src/case/change.ts';
import type { CaseEvent } from '../../src/case/events.ts';
import { isStaged, replay } from '../../src/case/replay.ts';
import { late } from '../../src/likelihoods/no-rear-sound.ts';
import { anyCase } from './any-case.ts';

const RIG: CaseEvent = { type: 'rig', rig: { unitKind: 'factory' } };
const NOTE: CaseEvent = { type: 'note', text: 'kept' };
const adopted = (...events: CaseEvent[]) =>
  adopt(noRearSound, { flow: noRearSound.id, events: [RIG, ...events, NOTE] });
const KEPT = expect.objectContaining({ type: 'kept' });
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
  ])('%s is left aside with a sentence, and the rest counts', (_, event, says) => {
    const { case: it_, refused } = adopted(event);
    expect(it_.events).toEqual([RIG, { type: 'kept', packed: pack(event) }, NOTE]);
    expect(refused).toHaveLength(1);
    expect(refused[0]).toMatch(says);
  });
  it('is told in one sentence for each reason, however much it is', () => {
    const repair: CaseEvent = { type: 'repair', verdict: 'horn-broken' };
    const horn: CaseEvent = { type: 'answer', step: 'horn', answer: { cannot: true } };
    const maybe: CaseEvent = { type: 'answer', step: 'fader-centre', answer: { option: 'maybe' } };
    const known: CaseEvent = { type: 'repair', verdict: 'coil-open' };
    const { case: it_, refused } = adopted(repair, horn, maybe, known, repair, horn, horn, maybe);
    expect(rest(it_.events).filter(({ type }) => type !== 'kept')).toEqual([known]);
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
      expect(it_.events.map(({ type }) => type)).toEqual(['kept']);
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
      events: [RIG, { type: 'answer', step: 'meter-digit', answer: { option: '0.01' } }, KEPT, KEPT],
    });
    expect(refused).toHaveLength(2);
  });
});

describe('any case', () => {
  it.each([noRearSound, isAReflashNeeded, whatIsInTheHeadUnit])('can be replayed in $id once it is adopted', (flow) => {
    fc.assert(
      fc.property(anyCase, (it_) => {
        const { case: usable, refused } = adopt(flow, it_);
        expect(usable.events.length).toBe(it_.events.length);
        const leftOut = usable.events.filter(({ type }) => type === 'kept').length;
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

describe('a case of a newer version', () => {
  /* What the newer one writes: an answer to a step that is not here, an option, a kind of entry and a field of the bike. */
  const NEWER = [
    noRearSound.id,
    ['b', { unitKind: 'factory', seatHeightM: 0.74 }],
    ['a', 'fader-centre', 'no-change'],
    ['a', 'horn', 'loud'],
    ['a', 'rear-control', 'by-voice'],
    ['z', { photo: 'blue wire' }],
    ['f', 'horn-broken'],
    ['n', 'Blue wire.'],
  ];
  const opened = (text: string) => {
    const read = fromText(text);
    if (!read.ok) throw new Error(read.message);
    const taken = adopt(noRearSound, read.case);
    return { case: taken.case, refused: [...read.refused, ...taken.refused] };
  };
  /** All lists in a text, however deep. */
  const inside = (value: unknown): readonly string[] =>
    Array.isArray(value)
      ? [JSON.stringify(value), ...value.flatMap(inside)]
      : value && typeof value === 'object'
        ? [JSON.stringify(value)]
        : [];

  it('says once what this one cannot use, and loses nothing of it on the way through', () => {
    const first = opened(JSON.stringify(NEWER));
    expect(first.refused).toHaveLength(5);
    const again = opened(toText(first.case));
    expect(again.refused).toEqual([]);
    expect(again.case).toEqual(first.case);
    const written = inside(JSON.parse(toText(again.case)));
    for (const entry of NEWER.slice(2)) expect(written).toContain(JSON.stringify(entry));
    expect(written).toContain(JSON.stringify((NEWER[1] as unknown[])[1]));
  });
  it('keeps it while this one goes on: answers, another bike, back, a hand-over', () => {
    const { case: taken } = opened(JSON.stringify(NEWER));
    const on = onBike(answered(taken, 'rear-history', { option: 'stopped' }), { unitKind: 'replaced' });
    const handed = handedOver(back(on), replay(noRearSound, on, late), noRearSound.id);
    for (const it_ of [on, back(back(back(on))), handed]) {
      const written = inside(JSON.parse(toText(it_))).join();
      for (const name of ['horn', 'by-voice', 'photo', 'horn-broken', 'seatHeightM']) expect(written).toContain(name);
    }
    expect(inside(JSON.parse(toText(on))).join()).toContain('"seatHeightM":0.74,"unitKind":"replaced"'.slice(0, 18));
  });
  it('has in its own version all of it in its place again', () => {
    // What this version wrote as unknown, and now knows: the version that follows.
    const text = JSON.stringify([noRearSound.id, ['o', ['a', 'fader-centre', 'no-change']], ['o', ['f', 'coil-open']]]);
    expect(opened(text)).toEqual({
      case: {
        flow: noRearSound.id,
        events: [
          { type: 'answer', step: 'fader-centre', answer: { option: 'no-change' } },
          { type: 'repair', verdict: 'coil-open' },
        ],
      },
      refused: [],
    });
    const bike = fromText(JSON.stringify([noRearSound.id, ['b', {}, { unitKind: 'factory' }]]));
    expect(bike).toMatchObject({ case: { events: [{ type: 'rig', rig: { unitKind: 'factory' } }] }, refused: [] });
  });
});
