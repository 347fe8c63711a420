import { describe, expect, it } from 'vitest';
import { siteBase, siteFolder } from '../../src/tools/site.ts';

describe('siteBase', () => {
  it.each([
    [undefined, '/'],
    ['', '/'],
    ['/', '/'],
    ['sub', '/sub/'],
    ['/sub', '/sub/'],
    ['/a/b/', '/a/b/'],
  ])('makes %j into %s', (given, base) => {
    expect(siteBase({ SITE_BASE: given })).toBe(base);
  });
});

describe('siteFolder', () => {
  it('is dist unless SITE_OUT names another folder', () => {
    expect(siteFolder({})).toBe('dist');
    expect(siteFolder({ SITE_OUT: 'elsewhere' })).toBe('elsewhere');
  });
});
