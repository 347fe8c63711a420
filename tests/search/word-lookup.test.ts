import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sameWords } from '../../src/search/same-words.ts';
import { slipsBetween } from '../../src/search/slips.ts';
import { soundOf } from '../../src/search/sound-key.ts';
import { SAME_LETTERS, SOUNDS_ALIKE, wordLookup } from '../../src/search/word-lookup.ts';

describe('the slips between two words', () => {
  // Boytsov 2011, section 2.2: insertion, deletion, substitution, and neighbours changed over, each once.
  it.each([
    ['trun', 'turn', 1],
    ['remtoe', 'remote', 1],
    ['spekers', 'speakers', 1],
    ['kitten', 'sitting', 3],
    ['', 'amp', 3],
  ] as const)('from “%s” to “%s” are %d', (a, b, slips) => expect(slipsBetween(a, b)).toBe(slips));
  it('are as many there as back, and none from a word to itself', () => {
    const word = fc.string({ maxLength: 12 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(slipsBetween(a, b)).toBe(slipsBetween(b, a));
        expect(slipsBetween(a, a)).toBe(0);
        expect(slipsBetween(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
  });
});

describe('the sound of a word', () => {
  it.each([
    ['speekers', 'speakers'],
    ['scince', 'since'],
    ['fone', 'phone'],
    ['chanel', 'channel'],
    ['wier', 'wire'],
    ['bak', 'back'],
    ['rong', 'wrong'],
  ])('of “%s” is that of “%s”', (written, meant) => expect(soundOf(written)).toBe(soundOf(meant)));
  it('tells words apart whose consonants differ', () => {
    expect(soundOf('fuse')).not.toBe(soundOf('fade'));
    expect(soundOf('amp')).not.toBe(soundOf('map'));
  });
});

describe('a typed word', () => {
  const known = new Set(['speaker', 'hot', 'amplifier', 'alternator', 'speed']);
  const meant = wordLookup([...known], (word) => known.has(word), sameWords([]));
  it('is itself where it is known', () => expect(meant('hot')).toEqual([['hot', 1]]));
  it('is the word that it sounds like, begins, or comes close to, less surely', () => {
    expect(meant('speeker')[0]?.[0]).toBe('speaker');
    expect(meant('alterna')[0]?.[0]).toBe('alternator');
    expect(meant('ampliffeir')[0]?.[0]).toBe('amplifier');
    for (const typed of ['speeker', 'alterna', 'ampliffeir']) expect(meant(typed)[0]?.[1]).toBeLessThan(1);
  });
  it('of three letters with another vowel is at most a slip of the finger', () => {
    expect(meant('hat')[0]?.[1]).toBeLessThan(SOUNDS_ALIKE);
    expect(meant('speeker')[0]?.[1]).toBe(SOUNDS_ALIKE);
  });
  it('with its own letters is surer than one that only sounds like it, and a plural is heard like its singular', () => {
    expect(meant('sepaker')[0]).toEqual(['speaker', SAME_LETTERS]);
    expect(meant('speakker')[0]).toEqual(['speaker', SAME_LETTERS]);
    expect(meant('spiedz')[0]?.[1]).not.toBe(SAME_LETTERS);
    expect(meant('speekers')[0]?.[0]).toBe('speaker');
  });
  it('is nothing where nothing is near', () => expect(meant('qqqqqq')).toEqual([]));
});
