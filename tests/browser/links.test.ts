import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tagsOf } from '../../src/tools/check-html.ts';
import { siteBase } from '../../src/tools/site.ts';

/* No browser is needed for it, but the built site is. */

const base = siteBase();
const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.html'));
const htmlOf = (file: string) => readFileSync(join('dist', file), 'utf8');
const anchorsOf = (html: string) => new Set(tagsOf(html).flatMap(({ attributes }) => attributes.get('id') ?? []));
const linksOf = (html: string) =>
  tagsOf(html).flatMap(({ name, attributes }) => (name === 'a' ? (attributes.get('href') ?? []) : []));

describe('every link of the built site', () => {
  it.each(pages)('on %s leads to a page or a file, and to a place on it that is there', (file) => {
    for (const link of linksOf(htmlOf(file))) {
      if (/^https?:|^mailto:/.test(link)) continue;
      const [path = '', anchor] = link.split('#');
      const at = path === '' ? file : path.slice(base.length).replace(/(^|\/)$/, '$1index.html');
      expect(existsSync(join('dist', at)), `${file} links ${link}`).toBe(true);
      // The search field of the start page is where the search of other pages leads without a script.
      if (anchor && at.endsWith('.html'))
        expect(anchorsOf(htmlOf(at)), `${file} links ${link}`).toContain(decodeURIComponent(anchor));
    }
  });
  it('together lead to every page but the one for an unknown address and the one without a network', () => {
    const linked = new Set(pages.flatMap((file) => linksOf(htmlOf(file)).map((link) => link.split('#')[0])));
    const orphans = pages
      .map((file) => base + file.replace(/index\.html$/, ''))
      .filter((address) => !linked.has(address) && !/404\.html$|offline\/$/.test(address));
    expect(orphans).toEqual([]);
  });
});
