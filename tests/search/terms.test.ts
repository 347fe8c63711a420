import { describe, expect, it } from 'vitest';
import { TERMS } from '../../src/search/glossary.ts';
import { termFinder } from '../../src/search/terms.ts';

const find = termFinder([
  { word: 'ground', slug: 'ground' },
  { word: 'ground loop', slug: 'ground-loop' },
  { word: 'OL', slug: 'ol' },
  { word: 'high-pass', slug: 'high-pass' },
]);
const linked = (text: string, seen?: Set<string>) =>
  find(text, seen).flatMap((piece) => (typeof piece === 'string' ? [] : [`${piece.text}=${piece.slug}`]));

describe('the words of the glossary in a text', () => {
  it('are found whole, with the ending of a plural, and the longest first', () => {
    expect(linked('Two ground loops. Grounding is no Ground.')).toEqual(['ground loops=ground-loop', 'Ground=ground']);
  });
  it('are found across a break of the line', () =>
    expect(linked('a ground\nloop')).toEqual(['ground\nloop=ground-loop']));
  it('are capitals where the word is', () => expect(linked('Jolly ol’ meter shows OL')).toEqual(['OL=ol']));
  it('are not parts of a compound', () => expect(linked('a low-ground car, a high-pass-filter')).toEqual([]));
  it('are linked once, also over several texts', () => {
    const seen = new Set<string>();
    expect(linked('ground and ground', seen)).toEqual(['ground=ground']);
    expect(linked('the ground', seen)).toEqual([]);
  });
  it('leave every letter in its place', () => {
    const text = 'The ground loop, then OL, then nothing.';
    expect(
      find(text)
        .map((piece) => (typeof piece === 'string' ? piece : piece.text))
        .join(''),
    ).toBe(text);
  });
  it('are none where there is no list', () => expect(termFinder([])('ground')).toEqual(['ground']));
  it('are each found in their own name', () => {
    const all = termFinder(TERMS);
    for (const { word, slug } of TERMS) expect(all(word)).toEqual([{ text: word, slug }]);
  });
});
