import { posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { tagsOf } from './check-html.ts';

/** What the first view may weigh, compressed: one round of ten packets, and what a slow phone parses in a moment. */
export const GOAL_FIRST_VIEW_BYTES = 14_600;
export const GOAL_SCRIPT_BYTES = 50_000;
/** What the page of a flow may fetch altogether. */
export const GOAL_ALL_SCRIPT_BYTES = 95_000;

export interface PageSize {
  readonly page: string;
  readonly html: number;
  readonly css: number;
  readonly script: number;
}

/** Gives the content of a file of the build, or undefined when there is none. */
export type FileOf = (path: string) => string | undefined;

export const gzipped = (text: string) => gzipSync(text, { level: 9 }).length;

/** The files that a script brings with it: its static imports, and theirs. */
export function scriptGraph(entries: readonly string[], fileOf: FileOf): ReadonlySet<string> {
  const seen = new Set<string>();
  const waiting = [...entries];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    const source = seen.has(path) ? undefined : fileOf(path);
    if (source === undefined) continue;
    seen.add(path);
    for (const specifier of staticImports(source)) waiting.push(posix.join(posix.dirname(path), specifier));
  }
  return seen;
}

/** The relative files that a built module imports at once; `import()` is fetched only when it is reached. */
export const staticImports = (source: string): readonly string[] =>
  [...source.matchAll(/(?:\bimport|\bfrom)\s*["'](\.{1,2}\/[^"']+)["']/g)].map(([, specifier = '']) => specifier);

const inBuild = (address: string, base: string) => (address.startsWith(base) ? address.slice(base.length) : address);

/** The scripts that a page names. */
export const scriptsOf = (html: string, base: string): readonly string[] =>
  tagsOf(html).flatMap(({ name, attributes }) => {
    const isPreload = name === 'link' && attributes.get('rel') === 'modulepreload';
    const named = [
      isPreload ? attributes.get('href') : undefined,
      name === 'script' ? attributes.get('src') : undefined,
      ...(name === 'astro-island'
        ? ['component-url', 'renderer-url', 'before-hydration-url'].map((key) => attributes.get(key))
        : []),
    ];
    return named.flatMap((address) => (address ? [inBuild(address, base)] : []));
  });

/**
 * What a page makes the browser fetch before anything is touched.
 * @param path of the page in the build, for example `about/index.html`
 */
export function pageSize(path: string, html: string, base: string, fileOf: FileOf): PageSize {
  const styles = new Set(
    tagsOf(html).flatMap(({ name, attributes }) =>
      name === 'link' && attributes.get('rel') === 'stylesheet' ? [inBuild(attributes.get('href') ?? '', base)] : [],
    ),
  );
  const sum = (paths: Iterable<string>) => [...paths].reduce((so, each) => so + gzipped(fileOf(each) ?? ''), 0);
  return {
    page: path.replace(/index\.html$/, '') || '/',
    html: gzipped(html),
    css: sum(styles),
    script: sum(scriptGraph(scriptsOf(html, base), fileOf)),
  };
}

/** The sizes as a table, and whether each page keeps to the two goals. */
export function sizeTable(sizes: readonly PageSize[]): string {
  const head = ['page', 'HTML', 'CSS', 'HTML + CSS', 'script', '≤ 14.6 kB', '≤ 50 kB'];
  const rows = sizes.map(({ page, html, css, script }) => [
    page,
    String(html),
    String(css),
    String(html + css),
    String(script),
    html + css <= GOAL_FIRST_VIEW_BYTES ? 'yes' : 'NO',
    script <= GOAL_SCRIPT_BYTES ? 'yes' : 'NO',
  ]);
  return inColumns([head, ...rows]);
}

/** What the script of a flow page weighs, compressed. */
export interface FlowBytes {
  readonly page: string;
  /** Until the second question is drawn. */
  readonly bytesFirst: number;
  /** All that the flow can ever load. */
  readonly bytesAll: number;
  /** What the script of every page may fetch besides, for the search and the words. */
  readonly bytesOfSite: number;
}

/** The script of the flow pages as a table, and whether each keeps to the two goals. */
export function flowSizeTable(flows: readonly FlowBytes[]): string {
  const rows = flows.map(({ page, bytesFirst, bytesAll, bytesOfSite }) => [
    page,
    String(bytesFirst),
    bytesFirst <= GOAL_SCRIPT_BYTES ? 'yes' : 'NO',
    String(bytesAll),
    bytesAll <= GOAL_ALL_SCRIPT_BYTES ? 'yes' : 'NO',
    String(bytesOfSite),
  ]);
  return inColumns([['page', 'first', '≤ 50 kB', 'all', '≤ 95 kB', 'of every page'], ...rows]);
}

/** Cells in columns: the first to the left, the others to the right. */
function inColumns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  const line = (row: readonly string[]) =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join('  ');
  return rows.map(line).join('\n');
}
