import { join } from 'node:path';
import { FAULT_FLOWS, FLOW_LIST, isProved } from '../case/flows.ts';

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
const CALCULATION = 'src/components/calculator/calculation-entry.ts';
const FOUND = 'src/components/search/search-list.ts';
const OF_EVERY_PAGE: Roots = [
  'src/components/in-place/openers.ts',
  'src/components/seat/bind-seats.ts',
  'src/browser/sw-register.ts',
];
/** What starts the page of either kind of flow. */
const STARTS: Roots = [WAKE, 'src/case/replay-staged.ts', 'src/case/replay-rows.ts', 'machines/opening.ts'];
const SCREENS = 'src/components/flow/parts.ts';
const FAULT_SCREENS = 'src/components/fault/parts.ts';
const OPENINGS = FLOW_LIST.map(([id]) => `machines/${id}.opening.ts`);
/** All of each flow: what it asks, and what its causes are. */
const ALL_OF = FLOW_LIST.map(
  ([id, flow]): Roots => (isProved(flow) ? [`machines/${id}.ts`, `src/likelihoods/${id}.ts`] : [`machines/${id}.ts`]),
);

/** What a step of an opening is needed by besides its own flow. */
const othersThan = (i: number): Roots => [
  ...OPENINGS.toSpliced(i, 1),
  ...ALL_OF.toSpliced(i, 1).flat(),
  SCREENS,
  FAULT_SCREENS,
];

/** A file that modules share: those that one of its ways leads to, each way from one of each of its roots. */
type Shared = readonly [name: string, ...ways: (readonly Roots[])[]];

/** A module goes into the first that it fits. */
const SHARED: readonly Shared[] = [
  ['site', [OF_EVERY_PAGE, [WAKE]]],
  ['preact', [[TONES], [MY_BIKE], [WAKE]]],
  ['cases', [[CASES]]],
  // A browser asks a plain host for six files at a time, and on a slow line each round is seconds. So what the flows open
  // with is in the file that starts them, but for the steps that only one of them has.
  ['flow', [STARTS], ...OPENINGS.map((opening, i) => [[opening], othersThan(i)])],
  // Sums and what people type: on pages of their own, too.
  [
    'sums',
    [
      [CALCULATION, MY_BIKE],
      [SCREENS, FAULT_SCREENS, ...ALL_OF.flat()],
    ],
  ],
  // A link to a case is made by the search of every page.
  ['links', [[FOUND], [SCREENS]]],
  // Fetched later, by any page of its kind.
  ['tones', [[TONES], [SCREENS]]],
  ['screens', [[SCREENS]]],
  ['ends', [[FAULT_SCREENS], ['src/components/plan/parts.ts']]],
];
/** What every fault flow fetches later and no other: the inference, the screens, and what they all ask and look for. */
const FAULTS: Shared = [
  'faults',
  [[FAULT_SCREENS, 'machines/kit.ts']],
  ALL_OF.filter((_, i) => FLOW_LIST[i]?.[1].kind === 'fault'),
];

/** What the bundler adds to every page that fetches something late. */
const PRELOADING = /preload-helper/;

interface Modules {
  getModuleInfo(
    id: string,
  ): { readonly importedIds: readonly string[]; readonly dynamicImporters: readonly string[] } | null;
}

/** The modules that some import at once, themselves included. */
const importsOf = (roots: Roots, modules: Modules): ReadonlySet<string> =>
  reachedFromAll(
    roots.map((path) => join(process.cwd(), path)),
    modules,
  );
const reachedFrom = (module: string, modules: Modules): ReadonlySet<string> => reachedFromAll([module], modules);

function reachedFromAll(from: readonly string[], modules: Modules): ReadonlySet<string> {
  const seen = new Set<string>();
  const waiting = [...from];
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
  type NameOf = (module: string, modules: Modules) => string | null;
  const sharedIn =
    ([name, ...ways]: Shared): NameOf =>
    (module, modules) => {
      const fits = ways.some((way) => way.every((roots) => isReached(module, roots, modules)));
      return fits || (name === 'site' && PRELOADING.test(module)) ? name : null;
    };
  /** The openings that need a module at once, by number. */
  const openingsOf = (module: string, modules: Modules): readonly number[] =>
    OPENINGS.flatMap((opening, i) => (isReached(module, [opening], modules) ? [i] : []));
  /**
   * What a few openings share: the pages of the others do not wait for it. The first flow is what most people come for, and
   * its page is split least.
   */
  const isOfFew = (module: string, modules: Modules): boolean => {
    const by = openingsOf(module, modules);
    return by.length > 1 && by.length <= OPENINGS.length / 2 && by[0] !== 0 && !isReached(module, STARTS, modules);
  };
  const needsOfFew = (module: string, modules: Modules): boolean =>
    [...reachedFrom(module, modules)].some((one) => isOfFew(one, modules));
  const ofAllOpenings =
    (flow: Shared): NameOf =>
    (module, modules) =>
      needsOfFew(module, modules) ? null : sharedIn(flow)(module, modules);
  /** One file for each set of a few openings, the larger sets first. */
  const ofOpenings =
    (flow: Shared, openings: number): NameOf =>
    (module, modules) => {
      const by = openingsOf(module, modules);
      return by.length === openings && sharedIn(flow)(module, modules) ? `openings-${by.join('-')}` : null;
    };
  /**
   * One file for each set of flows that modules are shared by, the larger sets first. An intake takes whole files that are
   * there for others: no other page is split for it.
   */
  const sharedBy =
    (flows: number): NameOf =>
    (module, modules) => {
      const by = FLOW_LIST.flatMap(([, { kind }], i) =>
        kind !== 'intake' && isReached(module, ALL_OF[i] ?? [], modules) ? [i] : [],
      );
      return by.length === flows ? `shared-${by.join('-')}` : null;
    };
  const bySets = Array.from({ length: FLOW_LIST.length - 1 }, (_, i) => FLOW_LIST.length - i);
  const more = bySets.filter((flows) => flows > FAULT_FLOWS.length).map(sharedBy);
  const fewer = bySets.filter((flows) => flows <= FAULT_FLOWS.length).map(sharedBy);
  const few = Array.from({ length: OPENINGS.length }, (_, i) => OPENINGS.length - i);
  const shared = SHARED.flatMap((one) =>
    one[0] === 'flow' ? [ofAllOpenings(one), ...few.map((openings) => ofOpenings(one, openings))] : [sharedIn(one)],
  );
  const groups: readonly NameOf[] = [...shared, ...more, sharedIn(FAULTS), ...fewer];
  return groups.map((nameOf, i) => ({
    priority: groups.length - i,
    // What is fetched by itself is a file of its own.
    name: (module: string, modules: Modules): string | null =>
      (modules.getModuleInfo(module)?.dynamicImporters.length ?? 0) > 0 ? null : nameOf(module, modules),
  }));
}
