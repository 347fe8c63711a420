import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CALCULATORS } from '../../src/calculators/all.ts';
import { FLOW_LIST } from '../../src/case/flows.ts';
import { courseOrder } from '../../src/tools/course.ts';

const files = ['explanation', 'how-to'].flatMap((kind) =>
  readdirSync(join('content', kind)).map((file) => join('content', kind, file)),
);
const articles = files.map((file) => {
  const [, front = '', ...rest] = readFileSync(file, 'utf8').split(/^---$/m);
  return { slug: basename(file, '.mdx'), front, text: rest.join('---') };
});
const each = articles.map((article) => [article.slug, article] as const);
const wordsIn = (text: string) => text.split(/\s+/).filter((word) => /[a-z0-9]/i.test(word)).length;

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
  it.each(each)('%s has 300 to 800 words, so that it is read to the end', (_, { text }) => {
    expect(wordsIn(text)).toBeGreaterThanOrEqual(300);
    expect(wordsIn(text)).toBeLessThanOrEqual(800);
  });
  it.each(each)('%s has a figure, a question with its answer, and serves something', (_, { front }) => {
    expect(front).toMatch(/^figure:/m);
    expect(front).toMatch(/^question:\n {2}asks: .*\n {2}answer: ./m);
    expect(front).toMatch(/^serves: \{.*\[.+\]/m);
  });
  it.each(each)('%s says of every figure where it is from', (_, { front }) => {
    const sources = [...front.matchAll(/- \{ id: [\w-]+, text: '?(.+?)'? \}/g)].map(([, text = '']) => text);
    expect(sources.length).toBeGreaterThan(0);
    // A standard, a book, a law, a sum of one's own, or the honest word that there is none.
    const named =
      /IEC|ISO|CFR|ASTM|NIOSH|ANSI|UN Regulation|W3C|Lessons In|Kinsler|et al\.|Audiol|McCombe|Ergon|de Kleer|encyclopaedic|maker’s|[Cc]omputed|Ohm|common practice|from memory|no published/;
    for (const source of sources) expect(source).toMatch(named);
  });
  it.each(each)('%s warns where something can hurt', (_, { text }) => {
    if (/probe|battery|tone|engine|fuse/.test(text)) expect(text).toMatch(/\*\*Caution:?\*\*|\*\*Do not|\*\*Never/);
  });
});
