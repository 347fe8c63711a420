import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CALCULATORS } from '../../src/calculators/all.ts';
import { FLOW_LIST } from '../../src/case/flows.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { ENTRIES } from '../../src/search/glossary.ts';
import { ALL_STEPS as STEPS } from '../../src/steps/all.ts';
import { articleOf } from '../../src/steps/article-of.ts';
import { courseOrder } from '../../src/tools/course.ts';
import { figuresIn, isGiven } from './figures.ts';

const ALL_STEPS = Object.values(STEPS);
const files = ['explanation', 'how-to'].flatMap((kind) =>
  readdirSync(join('content', kind)).map((file) => join('content', kind, file)),
);
const articles = files.map((file) => {
  const [, front = '', ...rest] = readFileSync(file, 'utf8').split(/^---$/m);
  return { slug: basename(file, '.mdx'), front, text: rest.join('---') };
});
const each = articles.map((article) => [article.slug, article] as const);
const wordsIn = (text: string) => text.split(/\s+/).filter((word) => /[a-z0-9]/i.test(word)).length;

/** The sources of an article, with the figures that they give. */
const sourcesIn = (front: string) =>
  [...front.matchAll(/- \{ id: [\w-]+, text: '(.+?)'(?:, gives: '(.+?)')? \}/g)].map(([, text = '', gives = '']) => ({
    text,
    gives,
  }));

describe('a figure', () => {
  it('is a number with a unit, each of a range, or a decimal; no count and no name', () => {
    expect(figuresIn('lift of 12 to 14 dB at 80 Hz, in 10 minutes, step 3')).toEqual(['12 dB', '14 dB']);
    expect(figuresIn('240, 400 and 560 Hz; a ratio of 0.7–1.4, **2.5** or more; IEC 60268-5')).toEqual([
      '240 Hz',
      '560 Hz',
      '0.7',
      '1.4',
      '2.5',
    ]);
    expect(figuresIn('[5 V of half](a-page-of-6.5-V)')).toEqual(['5 V']);
  });
  it('without a unit is given by its number', () => {
    expect(isGiven('0.7', new Set(['0.7 times']))).toBe(true);
    expect(isGiven('0.7', new Set(['0.75 V']))).toBe(false);
    expect(isGiven('7 V', new Set(['7 A']))).toBe(false);
  });
});

describe('the course', () => {
  it('has a place for every article, once', () => {
    expect([...courseOrder()].sort()).toEqual(articles.map(({ slug }) => slug).sort());
  });
  it('is served by every calculator and flow: each is named by an article', () => {
    const fronts = articles.map(({ front }) => front).join('');
    for (const { id, article } of CALCULATORS) {
      expect(fronts, `no article serves ${id}`).toContain(id);
      expect(courseOrder(), `${id} links an article that does not exist`).toContain(article);
    }
    for (const [id] of FLOW_LIST) expect(fronts, `no article serves ${id}`).toContain(id);
  });
});

describe('an article', () => {
  it.each(each)('%s has 300 to 700 words, so that it is read to the end', (_, { text }) => {
    expect(wordsIn(text)).toBeGreaterThanOrEqual(300);
    expect(wordsIn(text)).toBeLessThanOrEqual(700);
  });
  it.each(each)('%s has a figure, a question with its answer, and a flow that it serves', (_, { front }) => {
    expect(front).toMatch(/^figure:/m);
    expect(front).toMatch(/^question:\n {2}asks: .*\n {2}answer: ./m);
    const named = (kind: string) =>
      new RegExp(`^serves: .*${kind}: \\[(.+?)\\]`, 'm').exec(front)?.[1]?.split(', ') ?? [];
    const flows = named('flows');
    expect(flows.length).toBeGreaterThan(0);
    expect(FLOW_LIST.map(([id]) => id)).toEqual(expect.arrayContaining(flows));
    expect(CALCULATORS.map(({ id }) => id)).toEqual(expect.arrayContaining(named('calculators')));
  });
  it.each(each)('%s names its sources', (_, { front }) => {
    const sources = sourcesIn(front);
    expect(sources.length).toBeGreaterThan(0);
    // A standard, a book, a law, a sum of one's own, or the honest word that there is none.
    const named =
      /IEC|ISO|CFR|ASTM|NIOSH|ANSI|UN Regulation|W3C|Lessons In|Kinsler|et al\.|Audiol|McCombe|Ergon|de Kleer|encyclopaedic|maker’s|[Cc]omputed|Ohm|common practice|from memory|no published|of this site/;
    for (const { text } of sources) expect(text).toMatch(named);
  });
  it.each(each)('%s says of every figure which source gives it, and of no other', (_, { front, text }) => {
    const given = new Set(sourcesIn(front).flatMap(({ gives }) => figuresIn(gives)));
    // What a figure fills into a calculator is said there.
    const shown = front.slice(front.indexOf('\nfigure:')).replace(/typed: \{.*?\}/, '');
    const said = figuresIn(`${shown} ${text}`);
    expect(said.filter((figure) => !isGiven(figure, given))).toEqual([]);
    expect([...given].filter((figure) => !said.includes(figure) && !said.includes(figure.replace(/ .*/, '')))).toEqual(
      [],
    );
  });
  it.each(each)('%s warns where something can hurt', (_, { text }) => {
    if (/probe|battery|tone|engine|fuse/.test(text)) expect(text).toMatch(/\*\*Caution:?\*\*|\*\*Do not|\*\*Never/);
  });
});

describe('whoever uses the site', () => {
  const slugs = new Set(articles.map(({ slug }) => slug));
  it('finds an article behind every question', () => {
    for (const step of ALL_STEPS) expect(slugs, step.id).toContain(articleOf(step));
  });
  it('finds an article behind every cause', () => {
    for (const cause of CAUSES) expect(slugs, cause.id).toContain(cause.article);
  });
  it('is led from every article to a flow or a calculator, and to each article from one of them, another article or a word', () => {
    const linked = new Set([
      ...ALL_STEPS.map(articleOf),
      ...CAUSES.flatMap(({ article }) => article ?? []),
      ...CALCULATORS.map(({ article }) => article),
      ...ENTRIES.flatMap(({ article }) => article ?? []),
      ...articles.flatMap(({ text }) => [...text.matchAll(/\]\(([a-z0-9-]+)/g)].map(([, slug = '']) => slug)),
    ]);
    for (const { slug } of articles) expect(linked, `${slug} is an orphan`).toContain(slug);
  });
});

describe('the words of the trade', () => {
  /** No words of the trade: OK, what is written on the keys of a meter, and who publishes standards. */
  const EVERYDAY = new Set(['OK', 'MIN', 'MAX', 'LOW', 'IEC', 'NIOSH']);
  const known = new Set(
    ENTRIES.flatMap(({ word, also }) => `${word}, ${also}`.match(/[\p{L}\p{N}-]+/gu) ?? []).map((word) => word),
  );
  const texts: readonly (readonly [string, string])[] = [
    ...articles.map(({ slug, text }) => [slug, text] as const),
    ...ALL_STEPS.map(
      (step) =>
        [
          step.id,
          [step.ask, step.why, step.how]
            .filter((one) => typeof one === 'string' || Array.isArray(one))
            .flat()
            .join(' '),
        ] as const,
    ),
  ];
  it('that are written in capitals are in the glossary', () => {
    const unknown = texts.flatMap(([id, text]) =>
      (text.match(/\b[A-Z]{2,5}\b/g) ?? [])
        .filter((word) => !EVERYDAY.has(word) && !known.has(word))
        .map((word) => `${id}: ${word}`),
    );
    expect([...new Set(unknown)]).toEqual([]);
  });
  it('that the vocabularies of the trade have, and that stand in the texts, are in the glossary', () => {
    // International Electrotechnical Vocabulary, IEC 60050, parts 151, 702 and 801, and ISO 8713: the terms from memory.
    const TERMS_OF_THE_TRADE =
      /\b(alternator|amplifier|bus|capacitor|clipping|crossover|decibel|distortion|earth|ferrule|fuse|gain|ground loop|headroom|impedance|loom|polarity|rectifier|regulator|relay|resonance|sensitivity|shield|sine|stator|switch|tweeter|woofer|voltage drop)s?\b/gi;
    const inGlossary = new Set([...known].map((word) => word.toLowerCase()));
    for (const { word } of ENTRIES) inGlossary.add(word.toLowerCase());
    const all = texts.flatMap(([, text]) =>
      [...text.matchAll(TERMS_OF_THE_TRADE)].map(([, word = '']) => word.toLowerCase()),
    );
    const plain = new Set(['switch', 'earth', 'distortion']);
    expect([...new Set(all)].filter((word) => !plain.has(word) && !inGlossary.has(word))).toEqual([]);
  });
  it('each lead to an article that exists, where they lead to one', () => {
    for (const { word, article } of ENTRIES) if (article !== undefined) expect(courseOrder(), word).toContain(article);
  });
});
