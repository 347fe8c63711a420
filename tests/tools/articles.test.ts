import { describe, expect, it } from 'vitest';
import { articleSlugs, articleTarget } from '../../src/tools/articles.ts';

const slugs = new Set(['half-the-supply', 'two-tones']);

describe('articleTarget', () => {
  it('turns a bare slug into the address of the article', () => {
    expect(articleTarget('two-tones', '/', slugs)).toEqual({ href: '/read/two-tones/' });
  });
  it('keeps the base below which the site lives', () => {
    expect(articleTarget('two-tones', '/sub/', slugs)).toEqual({ href: '/sub/read/two-tones/' });
  });
  it('keeps a fragment', () => {
    expect(articleTarget('two-tones#why', '/', slugs)).toEqual({ href: '/read/two-tones/#why' });
  });
  it('leaves a link within the article alone', () => {
    expect(articleTarget('#why', '/', slugs)).toEqual({ href: '#why' });
  });
  it.each(['two-tonse', 'https://example.org/', '/read/two-tones/', ''])(
    'tells the author that “%s” is no article',
    (to) => {
      expect(articleTarget(to, '/', slugs)).toEqual({
        problem: `links to “${to}”, which is no article. Write the bare name of one: half-the-supply, two-tones.`,
      });
    },
  );
});

describe('articleSlugs', () => {
  it('finds the articles of this site by their file names', () => {
    expect([...articleSlugs('content')]).toContain('two-tones-one-ratio');
  });
});
