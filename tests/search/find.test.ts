import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FLOW_LIST } from '../../src/case/flows.ts';
import { kindOf } from '../../src/search/document.ts';
import { factReader, factRules } from '../../src/search/facts.ts';
import { type Finder, finder } from '../../src/search/find.ts';
import { indexFile } from '../../src/search/index-file.ts';
import { leanChoices } from '../../src/search/lean-choices.ts';
import { learn } from '../../src/search/learn.ts';
import { packed, unpacked } from '../../src/search/packed.ts';
import { sameWords, withoutForms } from '../../src/search/same-words.ts';
import { articleHeads } from '../../src/tools/article-heads.ts';
import { heard, type Phrasing } from '../../src/tools/heard.ts';
import { LOOKED_AT, MEASURED } from './phrasings.ts';

const HEARD = heard();
const index = await indexFile(articleHeads(), HEARD);
const { documents } = index;
const find: Finder = finder(index);

interface Counted {
  readonly first: number;
  readonly inThree: number;
  readonly factsRight: number;
  readonly factsWrong: number;
  readonly facts: number;
}
function counted(phrasings: readonly Phrasing[]): Counted {
  const rows = phrasings.map(({ words, is, orElse, facts }) => {
    const found = find(words);
    const at = found.findIndex(({ id }) => id === is || orElse.includes(id));
    const got = found.find(({ id }) => id === is)?.facts ?? {};
    return {
      first: at === 0,
      inThree: at >= 0 && at < 3,
      facts: Object.keys(facts).length,
      right: Object.entries(facts).filter(([step, option]) => got[step] === option).length,
      wrong: Object.entries(got).filter(([step, option]) => facts[step] !== option).length,
    };
  });
  const share = (is: (row: (typeof rows)[number]) => boolean) => rows.filter(is).length / rows.length;
  const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((so, row) => so + of(row), 0);
  return {
    first: share((row) => row.first),
    inThree: share((row) => row.inThree),
    facts: sum((row) => row.facts),
    factsRight: sum((row) => row.right),
    factsWrong: sum((row) => row.wrong),
  };
}

describe('what people type', () => {
  it('names only places that there are', () => {
    const known = new Set(documents.map(({ id }) => id));
    for (const { words, is, orElse } of [...HEARD, ...MEASURED, ...LOOKED_AT])
      for (const id of [is, ...orElse]) expect(known, `${words}: ${id}`).toContain(id);
  });
  it('is not learnt from where it is measured', () => {
    const learnt = new Set(HEARD.map(({ words }) => words.toLowerCase()));
    for (const { words } of [...MEASURED, ...LOOKED_AT]) expect(learnt).not.toContain(words.toLowerCase());
  });
  it('leads to the right place, first in nine of ten and among three nearly always, where it was not learnt from', () => {
    const { first, inThree } = counted(MEASURED);
    expect(first).toBeGreaterThanOrEqual(0.9);
    expect(inThree).toBeGreaterThanOrEqual(0.98);
  });
  it('gives its facts, and never one that was not said', () => {
    const { facts, factsRight, factsWrong } = counted(MEASURED);
    expect(factsRight / facts).toBeGreaterThanOrEqual(0.95);
    expect(factsWrong / MEASURED.length).toBeLessThanOrEqual(0.01);
  });
  // Before anybody had looked at it: 81 % first, 96 % in three, 54 of 68 facts, a wrong one in 3 of 117. Two hundred other
  // phrases, which are in heard.txt now, had 87 % first, 97 % in three, 68 of 100 facts and a wrong one in 4 when they came.
  // The two hundred after them had 90 % first, 97.5 % in three, 72 of 95 facts and wrong ones in 2.
  // Wanted are 90 %, 98 %, 95 % and one in a hundred. What is missed most now are checks.
  it('leads there and gives facts from rarer words, too', () => {
    const { first, inThree, facts, factsRight, factsWrong } = counted(LOOKED_AT);
    expect(first).toBeGreaterThanOrEqual(0.87);
    expect(inThree).toBeGreaterThanOrEqual(0.98);
    expect(factsRight / facts).toBeGreaterThanOrEqual(0.95);
    expect(factsWrong / LOOKED_AT.length).toBeLessThanOrEqual(0.01);
  });
  it('gives all the facts that are written beside what was heard', () => {
    const missed = HEARD.flatMap(({ words, is, facts }) => {
      const got = find(words).find(({ id }) => id === is)?.facts ?? {};
      return Object.entries(facts).flatMap(([step, option]) =>
        got[step] === option ? [] : [`${words}: ${step}=${option}`],
      );
    });
    expect(missed).toEqual([]);
  });
});

describe('the facts', () => {
  const told = (words: string, flow: string) => find(words).find((found) => found.flow === flow)?.facts;
  it('are what is wrong or what happened before, by where the words stand', () => {
    expect(told('no rear sound in the rain', 'no-rear-sound')).toEqual({ 'when-silent': 'wet' });
    expect(told('no rear sound since the rain', 'no-rear-sound')).toEqual({ 'last-change': 'rain' });
    expect(told('we changed the battery and now the rear speakers are dead', 'no-rear-sound')).toEqual({
      'last-change': 'battery',
    });
    expect(told('after ten minutes in the heat the amp shuts off', 'amp-wont-turn-on')).toEqual({
      'amp-goes-off': 'hot',
    });
  });
  it('know the side that is meant from the one that it is compared with', () => {
    expect(told('rear right is dead rear left plays', 'one-speaker-or-side-dead')).toEqual({
      'which-corner': 'rear-right',
    });
  });
  it('take “right” and “back” for a side and the rear only where they are', () => {
    expect(told('rear speakers cut out but right now they play', 'no-rear-sound')).toEqual({ 'which-silent': 'plays' });
    expect(told('one of them cuts out at full lock, right now all play', 'one-speaker-or-side-dead')).toEqual({
      'when-silent': 'steering',
      'which-corner': 'plays',
    });
    expect(told('rear right now silent', 'one-speaker-or-side-dead')).toEqual({ 'which-corner': 'rear-right' });
    expect(told('front right drops out on bumps then comes right back', 'one-speaker-or-side-dead')).toMatchObject({
      'which-corner': 'front-right',
    });
  });
  it('are not taken from one who asks how a thing is done', () => {
    expect(told('how to find out why the amp fuse blows', 'amp-wont-turn-on')).toEqual({});
    expect(told('the amp fuse blows', 'amp-wont-turn-on')).toEqual({ 'fuses-blown': 'some' });
  });
  it('are what is wrong where “now” ends what is said of it', () => {
    expect(told('took the lid off to paint it, rear right dead now', 'one-speaker-or-side-dead')).toEqual({
      'last-change': 'opened',
      'which-corner': 'rear-right',
    });
  });
  it('happened before where “since” ends what is said of now', () => {
    expect(told('i had the seat off last weekend, back speakers gone since', 'no-rear-sound')).toEqual({
      'last-change': 'opened',
    });
  });
  it('know a side by the hand that is there', () => {
    expect(told('fairing speaker on the throttle side is dead', 'one-speaker-or-side-dead')).toEqual({
      'which-corner': 'front-right',
    });
    expect(told('clutch side silent', 'one-speaker-or-side-dead')).toEqual({ 'which-corner': 'left' });
  });
  it('take left and right for ways to go where something is turned', () => {
    expect(told('steering to the left kills the back speakers', 'no-rear-sound')).toEqual({
      'when-silent': 'steering',
    });
    expect(told('rears died right after they flashed the head unit', 'no-rear-sound')).toEqual({
      'last-change': 'reflash',
    });
  });
  it('are read over articles, and out of a longer word with a slip in it', () => {
    expect(told('rear speakers only work with the engine off', 'no-rear-sound')).toEqual({ 'when-silent': 'running' });
    expect(told('rears dead since the batery swap', 'no-rear-sound')).toEqual({ 'last-change': 'battery' });
  });
  it('see no change in a “just” that means only', () => {
    expect(told('rear silent, just the stock radio on it', 'no-rear-sound')).toEqual({ 'unit-kind': 'factory' });
    expect(told('rear silent, just swapped the radio', 'no-rear-sound')).toEqual({ 'last-change': 'unit' });
    expect(told('both rear speakers play, just super weak', 'no-rear-sound')).toEqual({ 'which-silent': 'weak' });
  });
  it('see a word in its phrase only: that a lamp is off says nothing of an amplifier that goes off', () => {
    expect(told('amp light off', 'amp-wont-turn-on')).toEqual({ 'amp-light': 'off' });
    expect(told('amp goes off on bumps', 'amp-wont-turn-on')).toEqual({ 'amp-goes-off': 'bumps' });
  });
  it('know the side that is meant where the other one plays', () => {
    for (const words of [
      'left rear silent, right rear is ok',
      'rear only works on the right side, left back is silent',
      'from the back only the right one plays',
    ])
      expect(told(words, 'no-rear-sound')?.['which-silent'], words).toBe('left');
    expect(told('only the left bag plays', 'one-speaker-or-side-dead')).toEqual({ 'which-corner': 'rear-right' });
  });
  it('take no amplifier for one where there is none', () => {
    expect(told('distorts when loud, no amp on it', 'distortion-at-volume')).toEqual({ 'amps-drive': 'none' });
    expect(told('fronts have no amp, rear silent', 'no-rear-sound')).toEqual({ 'front-drive': 'unit' });
  });
  it('take a reflash for done only where it was, not where somebody asks for one', () => {
    expect(told('rear silent, do i need a reflash', 'no-rear-sound')).toEqual({});
    expect(told('rear silent since the reflash', 'no-rear-sound')).toEqual({ 'last-change': 'reflash' });
    expect(told('rears dont play, do i need a reflash', 'is-a-reflash-needed')).toEqual({ 'wrong-now': 'rear-silent' });
    expect(told('rear went dead after the reflash', 'is-a-reflash-needed')).toMatchObject({
      'planned-change': 'after-reflash',
      'worse-how': 'rear-silent',
    });
  });
  it('know a corner as a workshop notes it', () => {
    expect(told('lf dead', 'one-speaker-or-side-dead')).toEqual({ 'which-corner': 'front-left' });
    expect(told('front r dead', 'one-speaker-or-side-dead')).toEqual({ 'which-corner': 'front-right' });
  });
  it('are taken from what stands beside a question of how', () => {
    expect(told('how do i find out which profile it has, got a meter', 'what-is-in-the-head-unit')).toEqual({
      'tools-at-hand': 'meter',
    });
  });
  it('take as loud as another for no loudness, and the same volume for no same sound', () => {
    expect(told('one front speaker half as loud as the other', 'one-speaker-or-side-dead')).toEqual({
      'how-quiet': 'faint',
    });
    expect(told('distorts over bluetooth, usb at the same volume is clean', 'distortion-at-volume')).toEqual({
      'clean-source': 'good',
    });
  });
  it('know what drives which speakers, whichever is named first', () => {
    for (const words of ['rear is silent, the amp drives the lids', 'rears are powered by an amp, silent'])
      expect(told(words, 'no-rear-sound')?.['rear-drive'], words).toBe('amp');
    for (const words of [
      'front left dead, the head unit drives the fronts',
      'front left dead, fronts are on the radio',
    ])
      expect(told(words, 'one-speaker-or-side-dead'), words).toEqual({
        'front-fed': 'unit',
        'which-corner': 'front-left',
      });
  });
  it('are before it where “since then” begins what is said of now', () => {
    expect(told('new battery fitted, since then no sound in the back', 'no-rear-sound')).toEqual({
      'last-change': 'battery',
    });
    expect(told('vorne Lautsprecher getauscht, seitdem hinten stumm', 'no-rear-sound')).toEqual({
      'last-change': 'front',
    });
  });
  it('know the impedance of each end, with the sign or the word', () => {
    expect(told('4 ohm fronts and 2 ohm rears, flash?', 'is-a-reflash-needed')).toEqual({
      'front-ohms': '4',
      'rear-ohms': '2',
    });
    expect(told('rears say 2Ω on the magnet, no rear sound', 'no-rear-sound')).toEqual({ 'rear-rating': '2' });
  });
  it('are of what is wrong behind what happened, also without a comma', () => {
    expect(told('after the wash it stays silent in the back', 'no-rear-sound')?.['last-change']).toBe('opened');
    expect(told('after riding in the rain nothing from the left rear', 'one-speaker-or-side-dead')).toMatchObject({
      'last-change': 'rain',
      'which-corner': 'rear-left',
    });
  });
  it('are refused where a rule names a list that there is not, or is none', () => {
    const readerOf = (rule: string) => factReader({ rules: [rule], lists: {}, asked: {} }, (word) => word);
    expect(() => readerOf('a=b: left @nowhere')).toThrow(/no list “nowhere”/);
    expect(() => readerOf('a is b')).toThrow(/“a is b” is no rule/);
  });
  it('follow from all clauses of a rule, of lists in lists, and for both sides where it is written once', () => {
    const lists = { rear: 'back|bag', place: '@rear|top case' };
    const { given } = factReader(
      { rules: ['a,b=%-dead in here: % @place & dead & !not +dead'], lists, asked: {} },
      (word) => word,
    );
    const facts = (words: string) =>
      given(words.split(' ').map((word) => ({ means: new Set([word]), part: 0, past: false, light: false })));
    expect(facts('right top case speaker dead')).toEqual([
      { step: 'a', option: 'right-dead', flows: ['here'] },
      { step: 'b', option: 'right-dead', flows: ['here'] },
    ]);
    expect(facts('left bag plays')).toEqual([]);
    expect(facts('left bag not dead')).toEqual([]);
    expect(facts('left bag not all dead')).toHaveLength(2);
  });
});

describe('a rule with a sign', () => {
  const factsOf = (rule: string, words: string, lists = {}) =>
    factReader({ rules: [rule], lists, asked: {} }, (word) => word)
      .given(words.split(' ').map((word, i) => ({ means: new Set([word]), part: 0, past: i > 3, light: false })))
      .map(({ step, option }) => `${step}=${option}`);
  it('holds for front and rear, in its lists, too', () => {
    const lists = { $amp: '@$ amp|amp for @$', front: 'front', rear: 'lid' };
    expect(factsOf('$-drive=amp: @$amp & !@~amp', 'amp for lid', lists)).toEqual(['rear-drive=amp']);
    expect(factsOf('$-drive=amp: @$amp & !@~amp', 'front amp', lists)).toEqual(['front-drive=amp']);
    expect(factsOf('$-drive=amp: @$amp & !@~amp', 'front amp lid amp', lists)).toEqual([]);
  });
  it('holds for each impedance', () => {
    expect(factsOf('ohms=#: # +ohm', '4 ohm speakers')).toEqual(['ohms=4']);
    expect(factsOf('ohms=#: # +ohm', '3 ohm speakers')).toEqual([]);
  });
  it('looks only at what is wrong now where it says so of what there must not be', () => {
    expect(factsOf('a=b: left & !>front', 'left lid dead since front')).toEqual(['a=b']);
    expect(factsOf('a=b: left & !>front', 'left front dead')).toEqual([]);
  });
});

describe('the choices of a rule', () => {
  const oneFor = (word: string) => ({ mute: 'silent', ampli: 'amp' })[word] ?? word;
  it('stand once each, with one word for all that mean the same', () =>
    expect(leanChoices('!>mute|silent|ampli dead|=mute', oneFor)).toBe('!>silent|amp dead|=mute'));
  it('say no more than another one does', () =>
    expect(leanChoices('amp dead|dead|the +dead|dead amp off|amp +off|off', oneFor)).toBe('dead|off'));
});

describe('words of one meaning', () => {
  it('are the same without those that are only forms of others', () => {
    const groups = ['rear rears back backs backed', 'pass passes', 'bag bags bagger', 'loud laut lauten', 'let lautes'];
    const fewer = withoutForms(groups);
    expect(fewer).toEqual(['rear back', 'pass', 'bag bagger', 'loud laut lauten', 'let lautes']);
    for (const word of groups.flatMap((group) => group.split(' ')))
      expect(sameWords(fewer).oneFor(word), word).toBe(sameWords(groups).oneFor(word));
  });
});

describe('a word', () => {
  const { oneFor } = sameWords(['cut cuts', 'silent stummer', 'rain rainy', 'shut']);
  it('is known in forms that nobody wrote', () => {
    for (const [form, word] of [
      ['cutting', 'cut'],
      ['shutting', 'shut'],
      ['stummen', 'silent'],
      ['raining', 'rain'],
    ] as const)
      expect(oneFor(form), form).toBe(word);
  });
  it('is no form of one that is as like to another, and a short one of none', () => {
    expect(sameWords(['loud lauten', 'ring lautes']).oneFor('lauter')).toBe('lauter');
    expect(sameWords(['case fairing']).oneFor('fair')).toBe('fair');
    expect(oneFor('anything')).toBe('anything');
  });
});

describe('the search', () => {
  it.each(['', ' ', 'a', '?', '<script>alert(1)</script>', '%00', 'x'.repeat(500), '🙂', 'the of is'])(
    'answers “%s” without an exception',
    (words) => expect(Array.isArray(find(words))).toBe(true),
  );
  it('answers anything at all, each place once', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 600 }), (words) => {
        const ids = find(words).map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 200 },
    );
  });
  it('finds a word while it is still being typed', () => {
    expect(find('refl').some(({ id }) => id === 'complaint/is-a-reflash-needed')).toBe(true);
    expect(find('alternat').some(({ id }) => id === 'complaint/whine')).toBe(true);
  });
  it('forgives a slip of the finger', () => {
    expect(find('ampliffier').some(({ flow }) => flow === 'amp-wont-turn-on')).toBe(true);
    expect(find('remtoe wire').map(({ id }) => id)).toContain('word/remote-wire');
  });
  it('knows a word by its sound, and in German two that are written as one', () => {
    expect(find('bak speekers ded')[0]?.flow).toBe('no-rear-sound');
    expect(find('heckboxen stumm')[0]?.flow).toBe('no-rear-sound');
  });
  it('takes for said only what a word is or sounds like', () => {
    expect(find('endstufe hat rotes licht')[0]?.facts).toEqual({ 'amp-light': 'fault' });
    expect(find('amp dead scince the rain')[0]?.facts).toEqual({ 'last-change': 'rain' });
  });
  it('gives a word to whoever asks what it means', () => {
    for (const words of [
      'what is a relay',
      'meaning of relay',
      'meaning of polarety',
      'was bedeutet polarity',
      'que es un relay',
      'what does headroom mean on an amp',
    ])
      expect(find(words)[0]?.id, words).toMatch(/^word\//);
  });
  it('gives a check to whoever wants to measure, look or try', () => {
    expect(
      find('measure both sides of the main fuse')
        .slice(0, 3)
        .map(({ id }) => id),
    ).toContain('step/fuse-sides');
    expect(find('unplug the speakers from the amp, does the fault light clear').map(({ id }) => id)).toContain(
      'step/speakers-unplugged',
    );
  });
  it('gives a cause to whoever says what is wrong with a part, and a complaint to whoever says what is heard', () => {
    expect(find('the red lead rubbed through on the frame')[0]?.id).toBe('cause/plus-lead-chafed');
    expect(find('speaker cone torn')[0]?.id).toBe('cause/coil-rubbing');
    expect(find('amp dead since the red lead came loose')[0]?.id).toBe('complaint/amp-wont-turn-on');
  });
  it('reads a word in two as one, in two languages, and without its marks', () => {
    expect(find('saddle bag')[0]?.flow).toBe('no-rear-sound');
    expect(find('verstarker')[0]?.flow).toBe(find('amplifier')[0]?.flow);
    expect(find('bocinas traseras')[0]?.flow).toBe('no-rear-sound');
  });
});

describe('the documents', () => {
  it('each have a title, an address and a name of their own', () => {
    expect(new Set(documents.map(({ id }) => id)).size).toBe(documents.length);
    for (const { id, title, path } of documents) {
      expect(title.length, id).toBeGreaterThan(1);
      expect(path, id).toMatch(/^[a-z-]+\/(?:[a-z0-9-]+\/)?(?:#[\w-Ω]+)?$/i);
    }
  });
  it('say of a complaint that no flow knows what to measure first', () => {
    const asked = FLOW_LIST.map(([, { path }]) => path);
    for (const { id, path, measure } of documents.filter((one) => kindOf(one) === 'complaint'))
      expect(asked.includes(path) || measure !== undefined, id).toBe(true);
  });
  /* What finds a reversed speaker, a noise of the charging and a bad contact is asked there. */
  it.each([
    ['sounds hollow no bass since new speakers', 'thin-no-bass', 'where-do-i-begin'],
    ['whine goes up with revs', 'whine', 'eq-changes-when-engine-starts'],
    ['whine that follows the revs', 'whine', 'eq-changes-when-engine-starts'],
    ['it cuts out over bumps and comes back', 'cuts-out', 'where-do-i-begin'],
  ])('lead from “%s” to the questions that are best at it', (words, complaint, flow) => {
    const [first] = find(words);
    expect(first).toMatchObject({ id: `complaint/${complaint}`, text: expect.stringMatching(/^Asked in “.+”$/) });
    expect(first?.path).toBe(FLOW_LIST.find(([id]) => id === flow)?.[1].path);
    expect(first?.measure).toBeUndefined();
  });
  it('have every flow, by its own title', () => {
    for (const [id, { title, path }] of FLOW_LIST)
      expect(documents.find(({ flow }) => flow === id)).toMatchObject({ id: `complaint/${id}`, title, path });
  });
  it('take only facts that their flows ask for', async () => {
    const rules = factRules(index.facts.rules);
    expect(rules.length).toBeGreaterThan(20);
    for (const { step, option, only } of rules) {
      const flows = only ?? index.facts.asked[`${step}=${option}`] ?? [];
      expect(flows, `${step}=${option}`).not.toEqual([]);
      for (const id of flows) {
        const asked = (await FLOW_LIST.find(([one]) => one === id)?.[1].load())?.steps.get(step);
        expect(asked && 'options' in asked && asked.options, `${id} ${step}`).toHaveProperty(option);
      }
    }
  });
  it('fit into forty kilobytes, compressed, with all else that the search needs', () => {
    expect(gzipSync(JSON.stringify(packed(index))).length).toBeLessThan(40_000);
  });
  it('come out of what is sent as they went in', () => {
    expect(unpacked(JSON.parse(JSON.stringify(packed(index))))).toEqual(index);
  });
});

describe('a word that is asked for', () => {
  it.each([
    ['what is resonance in a bag lid', 'word/resonance'],
    ['whats a head unit', 'word/head-unit'],
    ['hauptsicherung was ist das', 'word/main-fuse'],
    ['was bedeutet sinusleistung', 'word/sine-power'],
    ['que es un fusible principal', 'word/main-fuse'],
    ['what is an alternator', 'word/alternator'],
    ['what is a stator', 'word/stator'],
  ])('comes first for “%s”', (typed, id) => {
    expect(find(typed)[0]?.id).toBe(id);
  });
});

describe('what was heard', () => {
  const here = { id: 'word/here', title: 'Here', words: '', path: 'words/#here' };
  const there = { id: 'word/there', title: 'There', words: '', path: 'words/#there' };
  it('makes a word speak for the place that it was said of, and against the others', () => {
    const read = (query: string) => ({
      fits: new Float64Array(2),
      words: query.split(' ').map((word) => [word, 1] as const),
      given: [],
    });
    const heardOf = (words: string) => ({ words, is: 'word/here' });
    const gone = Array.from({ length: 14 }, () => heardOf('gone'));
    const learnt = learn([...gone, heardOf('gone once')], [here, there], read);
    const [[, forHere = 0] = [], [, forThere = 0] = []] = learnt['gone'] ?? [];
    expect(forHere).toBeGreaterThan(0);
    expect(forThere).toBeLessThan(0);
    // Heard once, it may have been chance.
    expect(learnt['once']).toBeUndefined();
  });
  it('names only places that there are', () => {
    const read = () => ({ fits: new Float64Array(1), words: [], given: [] });
    expect(() => learn([{ words: 'gone', is: 'word/nowhere' }], [here], read)).toThrow(
      /word\/nowhere, which is no place/,
    );
  });
});
