import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/search/document.ts';
import { allDocuments } from '../../src/search/documents.ts';
import { type Finder, finder } from '../../src/search/find.ts';
import { factNames } from '../../src/search/index-file.ts';
import { articleHeads } from '../../src/tools/article-heads.ts';
import { MEASURED, MORE, type Phrasing, TUNED } from './phrasings.ts';

const documents = await allDocuments(articleHeads());
const find: Finder = finder(documents);

interface Counted {
  readonly first: number;
  readonly inThree: number;
  readonly factsRight: number;
  readonly factsWrong: number;
  readonly facts: number;
}
function counted(phrasings: readonly Phrasing[]): Counted {
  const rows = phrasings.map(({ words, is, facts }) => {
    const found = find(words);
    const at = found.findIndex(({ id }) => id === is);
    const got = found[at]?.facts ?? {};
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
    for (const { words, is } of [...TUNED, ...MEASURED, ...MORE]) expect(known, words).toContain(is);
  });
  it('leads to the right place, first in nearly nine of ten and among three nearly always, on the half it was not tuned by', () => {
    const { first, inThree } = counted(MEASURED);
    expect(first).toBeGreaterThanOrEqual(0.88);
    expect(inThree).toBeGreaterThanOrEqual(0.98);
  });
  it('gives its facts, and never one that was not said', () => {
    const { facts, factsRight, factsWrong } = counted(MEASURED);
    expect(factsRight / facts).toBeGreaterThanOrEqual(0.95);
    expect(factsWrong / MEASURED.length).toBeLessThanOrEqual(0.01);
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
});

describe('the documents', () => {
  it('each have a title, an address and a name of their own', () => {
    expect(new Set(documents.map(({ id }) => id)).size).toBe(documents.length);
    for (const { id, title, path } of documents) {
      expect(title.length, id).toBeGreaterThan(1);
      expect(path, id).toMatch(/^[a-z-]+\/(?:[a-z0-9-]+\/)?(?:#[\w-Ω]+)?$/i);
    }
  });
  it('say of a complaint without a flow what to measure first', () => {
    for (const document of documents.filter((one) => kindOf(one) === 'complaint'))
      expect(document.flow !== undefined || document.measure !== undefined, document.id).toBe(true);
  });
  it('take only facts that their flows ask for', async () => {
    expect(Object.keys(await factNames()).length).toBeGreaterThan(20);
  });
});
