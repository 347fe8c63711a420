import { join } from 'node:path';
import { FLOW_LIST } from '../case/flows.ts';

/*
 * Which modules go into one file of the build. Many small files compress badly and each costs a request, and a file that
 * holds more than its page needs is waited for. So modules that are always fetched together are one file.
 */

/** Modules of the sources, each with all that it imports at once. */
type Roots = readonly string[];

const WAKE = 'src/components/flow/wake.ts';
const CASES = 'src/browser/case-store.ts';
const TONES = 'src/components/tones/tones-entry.ts';
const MY_BIKE = 'src/components/my-bike/my-bike-entry.ts';
const OF_EVERY_PAGE: Roots = ['src/components/seat/bind-seats.ts', 'src/browser/sw-register.ts'];
const FAULT: Roots = ['src/case/replay-staged.ts', 'machines/opening.ts'];
const ROWS: Roots = ['src/case/replay-rows.ts', 'machines/rows.ts'];
const FAULT_SCREENS = 'src/components/fault/parts.ts';
const OPENINGS = FLOW_LIST.map(([id]) => `machines/${id}.opening.ts`);
const WHOLES = FLOW_LIST.map(([id]) => `machines/${id}.ts`);

/** What is there before the second question. A module goes into the first that is reached from each of its roots. */
const FIRST: readonly (readonly [name: string, ...by: Roots[]])[] = [
  ['site', OF_EVERY_PAGE],
  ['words', [TONES], [CASES]],
  ['preact', [TONES], [MY_BIKE], [WAKE]],
  ['cases', [CASES], [MY_BIKE]],
  ['flow', [WAKE, ...FAULT], [WAKE, ...ROWS]],
  ['fault', FAULT],
  ['rows', ROWS],
];
/** What any page of a kind fetches afterwards. */
const LATER: readonly (readonly [name: string, ...by: Roots[]])[] = [
  ['screens', ['src/components/flow/parts.ts']],
  ['ends', [FAULT_SCREENS], ['src/components/plan/parts.ts']],
  ['inference', [FAULT_SCREENS, 'machines/kit.ts']],
];

/** What the bundler adds to every page that fetches something late. */
const PRELOADING = /preload-helper/;

interface Modules {
  getModuleInfo(
    id: string,
  ): { readonly importedIds: readonly string[]; readonly dynamicImporters: readonly string[] } | null;
}

/** The modules that some import at once, themselves included. */
function importsOf(roots: Roots, modules: Modules): ReadonlySet<string> {
  const seen = new Set<string>();
  const waiting = roots.map((path) => join(process.cwd(), path));
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (seen.has(id)) continue;
    seen.add(id);
    waiting.push(...(modules.getModuleInfo(id)?.importedIds ?? []));
  }
  return seen;
}

/**
 * For the bundler: the files that modules share, by falling priority. A group takes what its modules import along, so
 * whatever is imported from further places comes before: what a module imports is in its own file or in an earlier one.
 */
export function sharedFiles() {
  const known = new Map<string, ReadonlySet<string>>();
  const isReached = (module: string, roots: Roots, modules: Modules): boolean => {
    const key = roots.join();
    const imports = known.get(key) ?? importsOf(roots, modules);
    known.set(key, imports);
    return imports.has(module);
  };
  const reachedFrom = (module: string, roots: Roots, modules: Modules): readonly number[] =>
    roots.flatMap((root, i) => (isReached(module, [root], modules) ? [i] : []));

  type NameOf = (module: string, modules: Modules) => string | null;
  const layer =
    ([name, ...by]: readonly [string, ...Roots[]]): NameOf =>
    (module, modules) =>
      by.every((roots) => isReached(module, roots, modules)) || (name === 'cases' && PRELOADING.test(module))
        ? name
        : null;
  /** One file for each set of the places that modules are reached from, the larger sets first. */
  const sets = (name: string, places: Roots, least: number, needed: Roots): readonly NameOf[] =>
    Array.from({ length: places.length - least + 1 }, (_, i) => (module: string, modules: Modules) => {
      const from = reachedFrom(module, places, modules);
      const fits = from.length === places.length - i && needed.some((root) => isReached(module, [root], modules));
      return fits ? `${name}-${from.join('-')}` : null;
    });
  const groups: readonly NameOf[] = [
    ...FIRST.map(layer),
    ...sets('opening', [TONES, ...OPENINGS, ...WHOLES, ...LATER.flatMap(([, ...by]) => by.flat())], 2, [
      TONES,
      ...OPENINGS,
    ]),
    ...LATER.map(layer),
    ...sets('shared', WHOLES, 2, WHOLES),
  ];
  return groups.map((nameOf, i) => ({
    priority: groups.length - i,
    // What is fetched by itself is a file of its own.
    name: (module: string, modules: Modules): string | null =>
      (modules.getModuleInfo(module)?.dynamicImporters.length ?? 0) > 0 ? null : nameOf(module, modules),
  }));
}
