import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isAReflashNeeded } from '../../machines/is-a-reflash-needed.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { adopt } from '../../src/case/adopt.ts';
import { fromText, toText } from '../../src/case/case-text.ts';
import { answered, cured, handedOver, noted, onBike, repaired, revised } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { MOST_EVENTS } from '../../src/case/limits.ts';
import { fromLink, LINK_VERSION, toLink } from '../../src/case/link.ts';
import { replay } from '../../src/case/replay.ts';
import { ticksOf } from '../../src/case/ticks.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { caseOn, toAnswer } from '../journey.ts';
import { anyCase } from './any-case.ts';

const packed = (text: string | Uint8Array) => `${LINK_VERSION}.${deflateRawSync(text).toString('base64url')}`;
const open = async (fragment: string): Promise<Case> => {
  const opened = await fromLink(fragment);
  if (!opened.ok) throw new Error(opened.message);
  expect(opened.refused).toEqual([]);
  return opened.case;
};

/** A ride with everything that a case can hold. */
const ANSWERS = {
  'rear-history': 'stopped',
  'last-change': 'workshop',
  'fader-centre': 'no-change',
  'rear-control': null,
  'rear-pair': { frontV: '2,00 V', leftV: '0', rightV: '5 mV' },
  'rear-pair-place': 'unit',
  'run-ohms': { leadsOhm: '0.2', leftOhm: 'OL', rightOhm: '3.6' },
} as const;
const ridden = Object.entries(ANSWERS).reduce<Case>(
  (it, [step, short]) => answered(it, step, toAnswer(short)),
  caseOn(noRearSound, EXAMPLE_RIGS.trunk),
);
const full = onBike(
  cured(
    repaired(noted(revised(ridden, 'last-change', { option: 'battery' }), 'Step 14 of 30, blue wire 🔵'), 'coil-open'),
    'coil-open',
  ),
  EXAMPLE_RIGS['frame-fairing'],
);

/** The case with one more line of a fix ticked. */
const ticksOn = (it: Case, line: string): Case => {
  let next = it;
  ticksOf(it, 'coil-open', (made) => {
    next = made;
  }).toggle(line);
  return next;
};

describe('a link', () => {
  it('brings back a case with its bike, answers, changes, repairs, cures and notes', async () => {
    expect(await open(await toLink(full))).toEqual(full);
  });
  it('brings back any case, whatever was typed in any script', async () => {
    await fc.assert(
      fc.asyncProperty(anyCase, async (it) => {
        expect(await open(await toLink(it))).toEqual(it);
      }),
    );
  });
  it('brings back a case that was handed over to another flow', async () => {
    const handed = handedOver(ridden, replay(noRearSound, ridden), isAReflashNeeded.id);
    expect(await open(await toLink(handed))).toEqual(handed);
  });
  it('holds only what may stand behind the # of an address', async () => {
    await fc.assert(
      fc.asyncProperty(anyCase, async (it) => {
        expect(await toLink(it)).toMatch(/^\d+\.[A-Za-z0-9_-]+$/);
      }),
      { numRuns: 30 },
    );
  });
  it('brings back the lines of a fix that are done', async () => {
    const half = ticksOn(ticksOn(full, 'Key off.'), 'Fit a new lead.');
    const there = await open(await toLink(half));
    expect(there).toEqual(half);
    const ticks = ticksOf(there, 'coil-open', () => expect.unreachable());
    expect(['Key off.', 'Fit a new lead.', 'Listen.'].map((line) => ticks.has(line))).toEqual([true, true, false]);
  });
  it('is the same for the same case', async () => expect(await toLink(full)).toBe(await toLink(structuredClone(full))));
  it('stays under 1,500 characters for a long ride on a full bike with three notes', async () => {
    const steps = [...noRearSound.steps.values()].slice(0, 25);
    const long = steps.reduce<Case>(
      (it, step) => {
        const [option] = Object.keys(step.outcomes);
        if (step.kind !== 'reading') return answered(it, step.id, { option: option ?? '' });
        const readings = Object.fromEntries(Object.keys(step.readings).map((name, i) => [name, `${2 + i}.${7 * i}3`]));
        return answered(it, step.id, { readings });
      },
      caseOn(noRearSound, EXAMPLE_RIGS.trunk),
    );
    const notes = [
      'Volume 14 of 30, front pair reads 2.1 V, the rear grille is dead silent.',
      'The brown and the white wire end at the rear plug behind the fairing.',
      'Call back on Friday after five.',
    ];
    const link = await toLink(notes.reduce(noted, long));
    expect(long.events).toHaveLength(26);
    expect(link.length).toBeLessThan(1500);
  });
});

describe('a link that is broken', () => {
  it('gives a sentence when its end was cut off, at every length', async () => {
    const link = await toLink(full);
    for (let length = 0; length < link.length; length++) {
      const opened = await fromLink(link.slice(0, length));
      expect(opened.ok, `cut at ${length}`).toBe(false);
      expect(!opened.ok && opened.message).toMatch(/^This link .*\.$/);
    }
  });
  it('gives a sentence, or a case that can still be used, when one character was changed', async () => {
    const link = await toLink(ridden);
    const anywhere = fc.tuple(fc.nat(link.length - 1), fc.constantFrom(...'AQgw09_-.=%ü '));
    await fc.assert(
      fc.asyncProperty(anywhere, async ([at, char]) => {
        const opened = await fromLink(link.slice(0, at) + char + link.slice(at + 1));
        if (!opened.ok) expect(opened.message).toMatch(/^(This|What) .*\.$/);
        else expect(replay(noRearSound, adopt(noRearSound, opened.case).case).state).not.toBe('');
      }),
      { numRuns: 300 },
    );
  });
  it('gives a sentence for any text at all', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string(),
          fc.string().map((text) => `1.${text}`),
        ),
        async (text) => {
          const opened = await fromLink(text);
          expect(opened.ok).toBe(false);
        },
      ),
    );
  });
  it.each(['', '#', 'hello', '1', '1.', '.abc', 'a.b', 'section-2', '1.%%%', '1.====', '-1.abc'])(
    '“%s” is no case of this site, or damaged',
    async (fragment) => {
      const opened = await fromLink(fragment);
      expect(opened.ok).toBe(false);
      expect(!opened.ok && opened.message).toMatch(/does not hold a case of this site|is damaged/);
    },
  );
  it('names both versions when another version of the site made it', async () => {
    const link = await toLink(full);
    expect(await fromLink(link.replace(/^\d+/, '7'))).toEqual({
      ok: false,
      message: 'This link was made by another version of this site (7); this one reads version 1.',
    });
  });
  it('is refused when it would unpack into more than a case can be', async () => {
    const bomb = packed(JSON.stringify([noRearSound.id, ['n', 'a'.repeat(20_000_000)]]));
    expect(bomb.length).toBeLessThan(30_000);
    expect((await fromLink(bomb)).ok).toBe(false);
    const most = packed(
      JSON.stringify([noRearSound.id, ...Array.from({ length: 190 }, () => ['n', 'a'.repeat(1000)])]),
    );
    expect((await fromLink(most)).ok).toBe(true);
  });
  it('is refused unread when it is longer than any case', async () => {
    expect(await fromLink(`${LINK_VERSION}.${'A'.repeat(1_000_000)}`)).toEqual({
      ok: false,
      message: 'This link is longer than any case of this site can be.',
    });
  });
  it('is refused when what it holds is no JSON, no list, or a list of something else', async () => {
    for (const text of ['{"flow":1}', '7', '"text"', 'null', '[]', '[7]', '[["a"]]', '[', new Uint8Array([255, 254])]) {
      expect((await fromLink(packed(text))).ok).toBe(false);
    }
  });
});

describe('a link that is made to keep a page busy', () => {
  const many = (count: number, entry: (i: number) => unknown): string =>
    packed(JSON.stringify([noRearSound.id, ...Array.from({ length: count }, (_, i) => entry(i))]));
  const withHandOver = (entries: string) => packed(entries.replace(/\]$/, ',["h","no-rear-sound"]]'));
  const unknownAnswers = JSON.stringify([
    noRearSound.id,
    ...Array.from({ length: 12_000 }, (_, i) => ['a', `s${i}`, 0]),
  ]);

  it.each([
    ['12,000 unknown answers', packed(unknownAnswers)],
    ['12,000 unknown answers before a hand-over', withHandOver(unknownAnswers)],
    ['4,000 changes of one answer', many(4000, (i) => ['r', 'fader-centre', i % 2 ? 'no-change' : 'cured'])],
    ['4,000 changes of different answers', many(4000, (i) => ['r', [...noRearSound.steps.keys()][i % 20], 0])],
    ['10,000 repairs', many(10_000, () => ['f', 'coil-open'])],
    ['6,000 bikes that cannot be', many(6000, (i) => ['b', { supplyOffV: i }])],
    ['60,000 entries of no kind', many(60_000, () => 0)],
    [
      'an answer of 10,000 readings',
      many(1, () => ['a', 'x', Object.fromEntries(Array.from({ length: 10_000 }, (_, i) => [i, '1']))]),
    ],
  ])('with %s is cut to what a case can be, and few sentences say what was left out', async (_, link) => {
    const opened = await fromLink(link);
    if (!opened.ok) throw new Error(opened.message);
    const { case: usable, refused } = adopt(noRearSound, opened.case);
    expect(usable.events.length).toBeLessThanOrEqual(MOST_EVENTS);
    expect(opened.refused.length + refused.length).toBeLessThanOrEqual(3);
  });
});

describe('a saved case', () => {
  it('brings back any case', () => {
    fc.assert(
      fc.property(anyCase, (it) => {
        expect(fromText(toText(it))).toEqual({ ok: true, case: it, refused: [] });
      }),
    );
  });
  it('leaves out entries of a kind that it does not know, and says so once, however many there are', () => {
    const text = JSON.stringify([
      'no-rear-sound',
      ['z', 1],
      7,
      null,
      ['a'],
      ['a', 'fader-centre', true],
      ['n', 'kept'],
    ]);
    expect(fromText(text)).toEqual({
      ok: true,
      case: {
        flow: 'no-rear-sound',
        events: [
          ...[['z', 1], ['a'], ['a', 'fader-centre', true]].map((packed) => ({ type: 'kept', packed })),
          { type: 'note', text: 'kept' },
        ],
      },
      refused: ['5 entries were of a kind that this version does not know. 3 are kept for one that does.'],
    });
    expect(fromText('["no-rear-sound",["z",1]]')).toMatchObject({
      refused: ['One entry was of a kind that this version does not know. It is kept for one that does.'],
    });
  });
  it('says what it could not use of the bike', () => {
    expect(fromText('["no-rear-sound",["b",{"supplyOffV":24,"unitKind":"factory"}]]')).toEqual({
      ok: true,
      case: {
        flow: 'no-rear-sound',
        events: [{ type: 'rig', rig: { unitKind: 'factory' }, asCame: { supplyOffV: 24, unitKind: 'factory' } }],
      },
      refused: ['Supply, engine off: 24 is outside 11.0 to 13.6 V.'],
    });
  });
  it('says only of the bike that it stands on what could not be used', () => {
    const text = '["no-rear-sound",["b",{"supplyOffV":24}],["b",{"unitKind":"factory"}]]';
    expect(fromText(text)).toMatchObject({ ok: true, refused: [] });
  });
  it('counts what could not be used of a bike when it is very much', () => {
    const strange = Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`k${i}`, 1]));
    const opened = fromText(JSON.stringify(['no-rear-sound', ['b', strange]]));
    expect(opened.ok && opened.refused).toHaveLength(6);
    expect(opened.ok && opened.refused.at(-1)).toBe('4995 more values of this bike could not be used.');
  });
  it('does not take an endless id for a step', () => {
    expect(fromText(`["no-rear-sound",["a","${'x'.repeat(101)}",0],["n","kept"]]`)).toMatchObject({
      case: { events: [{ type: 'kept' }, { type: 'note', text: 'kept' }] },
      refused: ['One entry was of a kind that this version does not know. It is kept for one that does.'],
    });
    expect(fromText(`["no-rear-sound",["a","${'x'.repeat(3000)}",0],["n","kept"]]`)).toMatchObject({
      case: { events: [{ type: 'note', text: 'kept' }] },
      refused: ['One entry was of a kind that this version does not know.'],
    });
  });
  it('cuts what no person types: a note at 1,000 characters, a reading at 40', () => {
    const text = JSON.stringify(['x', ['n', 'n'.repeat(1001)], ['a', 's', { v: '1'.repeat(41) }]]);
    expect(fromText(text)).toMatchObject({
      case: {
        events: [
          { type: 'note', text: 'n'.repeat(1000) },
          { type: 'answer', step: 's', answer: { readings: { v: '1'.repeat(40) } } },
        ],
      },
    });
  });
  it('never throws, whatever JSON it finds', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.json(),
          fc.json().map((json) => `["no-rear-sound",["b",${json}],["a","x",${json}],${json}]`),
        ),
        (text) => {
          const opened = fromText(text);
          if (opened.ok) expect(fromText(toText(opened.case))).toEqual({ ok: true, case: opened.case, refused: [] });
          else expect(opened.message).toMatch(/\.$/);
        },
      ),
      { numRuns: 500 },
    );
  });
  it.each(['', 'nonsense', '{}', '[]', '[1]', '"x"'])('“%s” is damaged or no case of this site', (text) => {
    const opened = fromText(text);
    expect(opened.ok).toBe(false);
    expect(!opened.ok && opened.message).toMatch(/damaged|not a case of this site/);
  });
});
