import { posix } from 'node:path';
import { tagsOf } from './check-html.ts';
import { type FileOf, type FlowBytes, gzipped, scriptGraph, scriptsOf } from './page-size.ts';

/*
 * The pages of flows name the modules of their flow as they stand in the sources. The finished build has the files in
 * place of them, and says before anything else which files the first question needs.
 */

const NAMED = ['data-module', 'data-whole', 'data-late'] as const;

/** Puts files in place of the modules that a page names, and lists what its first question needs in its head. */
export function finishFlowPage(
  html: string,
  base: string,
  fileOf: FileOf,
  modules: Readonly<Record<string, string>>,
): string {
  const place = tagsOf(html).find(({ attributes }) => attributes.has('data-module'));
  if (!place) return html;
  const named = NAMED.flatMap((key) => {
    const module = place.attributes.get(key);
    if (module === undefined) return [];
    const file = modules[module];
    if (file === undefined)
      throw new Error(`${key}: ${module} is no file of the build. It must be loaded by the list of flows.`);
    return [[key, module, file] as const];
  });
  const filled = named.reduce((so, [key, module, file]) => so.replace(`${key}="${module}"`, `${key}="${file}"`), html);
  const first = scriptGraph([...scriptsOf(filled, base), ...moduleOf(filled)], fileOf);
  const links = [...first].map((file) => `<link rel="modulepreload" href="${base}${file}">`).join('');
  return filled.replace('</head>', `${links}</head>`);
}

const attributeOf = (html: string, key: (typeof NAMED)[number]): readonly string[] =>
  tagsOf(html).flatMap(({ attributes }) => attributes.get(key) ?? []);
const moduleOf = (html: string): readonly string[] => attributeOf(html, 'data-module');

/** The relative files that a built module fetches once they are needed. */
const laterImports = (source: string): readonly string[] =>
  [...source.matchAll(/\bimport\(\s*["'`](\.{1,2}\/[^"'`]+)["'`]/g)].map(([, specifier = '']) => specifier);

/** The files that a built module fetches once they are needed. */
const laterFiles = (file: string, fileOf: FileOf): readonly string[] =>
  laterImports(fileOf(file) ?? '').map((specifier) => posix.join(posix.dirname(file), specifier));

/**
 * Everything that is reached from some files, at once or later. The list of flows is left out: it is fetched only for a
 * link that belongs to another page, on the way there.
 */
function everything(entries: readonly string[], others: ReadonlySet<string>, fileOf: FileOf): ReadonlySet<string> {
  const found = new Set<string>();
  const waiting = [...entries];
  const isTheList = (file: string) => laterFiles(file, fileOf).some((later) => others.has(later));
  for (let entry = waiting.pop(); entry !== undefined; entry = waiting.pop()) {
    if (isTheList(entry)) continue;
    for (const file of scriptGraph([entry], fileOf)) {
      if (found.has(file)) continue;
      found.add(file);
      waiting.push(...laterFiles(file, fileOf));
    }
  }
  return found;
}

/**
 * What the script of each flow page weighs. Pages that are of no flow are left out. What a script of every page fetches
 * once it is asked for (the search, the words) is the site's and no flow's: it is counted once, apart.
 */
export function flowBytes(
  pages: readonly { readonly path: string; readonly html: string }[],
  base: string,
  fileOf: FileOf,
): readonly FlowBytes[] {
  const flows = pages.filter(({ html }) => moduleOf(html).length > 0);
  const ownOf = (html: string) => NAMED.flatMap((key) => attributeOf(html, key));
  const sum = (files: Iterable<string>) => [...files].reduce((so, file) => so + gzipped(fileOf(file) ?? ''), 0);
  const named = pages.map(({ html }) => new Set(scriptsOf(html, base)));
  const ofAll = [...(named[0] ?? [])].filter((file) => named.every((scripts) => scripts.has(file)));
  return flows.map(({ path, html }) => {
    const own = ownOf(html);
    const others = new Set(flows.flatMap((other) => ownOf(other.html)).filter((file) => !own.includes(file)));
    const first = scriptGraph([...scriptsOf(html, base), ...moduleOf(html)], fileOf);
    // A page announces files of every page among its own: they belong to whoever starts them.
    const started = tagsOf(html).flatMap(({ name, attributes }) => {
      const file = name === 'script' ? attributes.get('src')?.slice(base.length) : undefined;
      return file !== undefined && !ofAll.includes(file) ? [file] : [];
    });
    const flow = new Set([...first, ...everything([...started, ...own], others, fileOf)]);
    const site = [...everything(ofAll, others, fileOf)].filter((file) => !flow.has(file));
    return {
      page: path.replace(/index\.html$/, ''),
      bytesFirst: sum(first),
      bytesAll: sum(flow),
      bytesOfSite: sum(site),
    };
  });
}
