import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { flowSizeTable, pageSize, scriptGraph, sizeTable, staticImports } from '../../src/tools/page-size.ts';

const gz = (text: string) => gzipSync(text, { level: 9 }).length;
const files: Record<string, string> = {
  'site.css': 'body{margin:0}',
  '_astro/entry.js': 'import{a}from"./a.js";import"./b.js";const later=()=>import("./later.js");',
  '_astro/a.js': 'import{b as c}from"./b.js";export const a=1;',
  '_astro/b.js': 'export const b=2;',
  '_astro/later.js': 'export const later=3;',
};
const fileOf = (path: string) => files[path];

describe('staticImports', () => {
  it('lists what a module imports at once, and not what it may import later', () => {
    expect(staticImports(files['_astro/entry.js'] ?? '')).toEqual(['./a.js', './b.js']);
  });
  it('lists what a module passes on', () => {
    expect(staticImports('export{x}from"../x.js";export*from"./y.js"')).toEqual(['../x.js', './y.js']);
  });
});

describe('scriptGraph', () => {
  it('counts a shared module once', () => {
    expect([...scriptGraph(['_astro/entry.js'], fileOf)].sort()).toEqual([
      '_astro/a.js',
      '_astro/b.js',
      '_astro/entry.js',
    ]);
  });
});

describe('pageSize', () => {
  const html = (base: string) =>
    `<link rel="stylesheet" href="${base}site.css"><link rel="modulepreload" href="${base}_astro/b.js"><script type="module" src="${base}_astro/entry.js"></script>`;

  it.each(['/', '/sub/'])('adds up what a page loads by itself when the site lives at %s', (base) => {
    const all = ['_astro/entry.js', '_astro/a.js', '_astro/b.js'].map((path) => gz(files[path] ?? ''));
    expect(pageSize('about/index.html', html(base), base, fileOf)).toEqual({
      page: 'about/',
      html: gz(html(base)),
      css: gz(files['site.css'] ?? ''),
      script: all.reduce((sum, size) => sum + size),
    });
  });
  it('counts the code of an island, which its own bootstrap fetches', () => {
    const island = '<astro-island component-url="/_astro/a.js" renderer-url="/_astro/b.js"></astro-island>';
    expect(pageSize('index.html', island, '/', fileOf).script).toBe(
      gz(files['_astro/a.js'] ?? '') + gz(files['_astro/b.js'] ?? ''),
    );
  });
});

describe('sizeTable', () => {
  it('says yes at the goal and NO one byte above it', () => {
    const [, at, above] = sizeTable([
      { page: 'at/', html: 10_000, css: 4_600, script: 50_000 },
      { page: 'above/', html: 10_000, css: 4_601, script: 50_001 },
    ]).split('\n');
    expect(at).toMatch(/^at\/ .* 14600 .* yes .* yes$/);
    expect(above).toMatch(/^above\/ .* 14601 .* NO .* NO$/);
  });
});

describe('flowSizeTable', () => {
  it('says yes at each goal and NO one byte above it', () => {
    const [, at, above] = flowSizeTable([
      { page: 'at/', bytesFirst: 50_000, bytesAll: 95_000, bytesOfSite: 9 },
      { page: 'above/', bytesFirst: 50_001, bytesAll: 95_001, bytesOfSite: 9 },
    ]).split('\n');
    expect(at).toMatch(/^at\/ +50000 +yes +95000 +yes +9$/);
    expect(above).toMatch(/^above\/ +50001 +NO +95001 +NO +9$/);
  });
});
