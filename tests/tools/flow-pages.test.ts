import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { finishFlowPage, flowBytes } from '../../src/tools/flow-pages.ts';

const gz = (...files: readonly string[]) =>
  files.reduce((sum, file) => sum + gzipSync(BUILT[file] ?? '', { level: 9 }).length, 0);

/** Two flows that share a script; it fetches its screens late, and the list of flows for a link that belongs elsewhere. */
const BUILT: Record<string, string> = {
  '_astro/wake.js': 'import{a}from"./a.js";const p=()=>import("./screens.js"),l=()=>import(`./list.js`);',
  '_astro/a.js': 'export const a=1;',
  '_astro/screens.js': 'import"./a.js";import"./figures.js";export const s="screens of any flow";',
  '_astro/figures.js': 'export const f="figures";',
  '_astro/list.js': 'const one=()=>import("./one.js"),two=()=>import("./two.js"),l=()=>import("./one-late.js");',
  '_astro/one.opening.js': 'import"./steps.js";export const opening={};',
  '_astro/one.js': 'import"./steps.js";import"./one.opening.js";export const one={};',
  '_astro/steps.js': 'export const steps="steps of one";',
  '_astro/two.js': 'export const two="a flow of its own";',
  '_astro/site.js': 'const s=()=>import("./search.js");',
  '_astro/search.js': 'import"./a.js";export const s="the search of every page";',
  '_astro/one-late.js': 'import"./figures.js";export const late="its table";',
};
const fileOf = (path: string) => BUILT[path];
const MODULES = {
  'machines/one.opening.ts': '_astro/one.opening.js',
  'machines/one.ts': '_astro/one.js',
  'machines/two.ts': '_astro/two.js',
  'src/likelihoods/one.ts': '_astro/one-late.js',
};
const SITE = '<script type="module" src="/_astro/site.js"></script>';
const page = (base: string, place: string, more = '') =>
  `<html><head><title>x</title></head><body><div id="flow" ${place}></div>${more}<script type="module" src="${base}_astro/wake.js"></script></body></html>`;
const ONE = 'data-module="machines/one.opening.ts" data-whole="machines/one.ts" data-late="src/likelihoods/one.ts"';

describe('the page of a flow, finished', () => {
  it.each(['/', '/sub/'])('names the files of its flow in place of the modules, when the site lives at %s', (base) => {
    const html = finishFlowPage(page(base, ONE), base, fileOf, MODULES);
    expect(html).toContain(
      'data-module="_astro/one.opening.js" data-whole="_astro/one.js" data-late="_astro/one-late.js"',
    );
  });
  it.each(['/', '/sub/'])('announces all that its first question needs and nothing more, at %s', (base) => {
    const html = finishFlowPage(page(base, ONE), base, fileOf, MODULES);
    const announced = [...html.matchAll(/<link rel="modulepreload" href="([^"]+)">/g)].map(([, href]) => href);
    expect(announced.toSorted()).toEqual(
      ['a.js', 'one.opening.js', 'steps.js', 'wake.js'].map((file) => `${base}_astro/${file}`),
    );
    expect(html.indexOf('modulepreload')).toBeLessThan(html.indexOf('</head>'));
  });
  it('stops the build where a module is no file of it', () => {
    expect(() => finishFlowPage(page('/', 'data-module="machines/three.ts"'), '/', fileOf, MODULES)).toThrow(
      /machines\/three\.ts is no file of the build/,
    );
  });
  it('leaves any other page as it is', () => {
    const html = page('/', 'data-flow="one"');
    expect(finishFlowPage(html, '/', fileOf, MODULES)).toBe(html);
  });
});

describe('what a flow page weighs', () => {
  const pages = [
    { path: 'find/one/index.html', html: finishFlowPage(page('/', ONE, SITE), '/', fileOf, MODULES) },
    {
      path: 'plan/two/index.html',
      html: finishFlowPage(page('/', 'data-module="machines/two.ts"', SITE), '/', fileOf, MODULES),
    },
    { path: 'about/index.html', html: `<html><head></head><body>${SITE}</body></html>` },
  ];
  const [one, two, ...more] = flowBytes(pages, '/', fileOf);

  it('is counted for flow pages only', () => {
    expect([one?.page, two?.page]).toEqual(['find/one/', 'plan/two/']);
    expect(more).toEqual([]);
  });
  it('is at first its script and how its own flow opens', () => {
    expect(one?.bytesFirst).toBe(
      gz('_astro/site.js', '_astro/wake.js', '_astro/a.js', '_astro/one.opening.js', '_astro/steps.js'),
    );
    expect(two?.bytesFirst).toBe(gz('_astro/site.js', '_astro/wake.js', '_astro/a.js', '_astro/two.js'));
  });
  it('is in all whatever it may fetch, each file once, but for the list and the flows of other pages', () => {
    const shared = ['_astro/site.js', '_astro/wake.js', '_astro/a.js', '_astro/screens.js', '_astro/figures.js'];
    expect(one?.bytesAll).toBe(
      gz(...shared, '_astro/one.opening.js', '_astro/one.js', '_astro/steps.js', '_astro/one-late.js'),
    );
    expect(two?.bytesAll).toBe(gz(...shared, '_astro/two.js'));
  });
  it('leaves out what the script of every page fetches when it is asked for, and names it apart', () => {
    expect(one?.bytesOfSite).toBe(gz('_astro/search.js'));
    expect(two?.bytesOfSite).toBe(gz('_astro/search.js'));
  });
});
