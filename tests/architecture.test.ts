import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/** Folders in the order they build on each other: each may import those before it, none may import those after it. */
const CHAIN = ['compute', 'rig', 'steps', 'causes', 'plan', 'machines', 'case', 'components', 'pages'] as const;
const upTo = (folder: (typeof CHAIN)[number]) => CHAIN.slice(0, CHAIN.indexOf(folder) + 1);

/** What a folder may import. `types` are erased before anything runs, so a page does not load what is behind them. */
const MAY_IMPORT: Readonly<Record<string, { readonly all: readonly string[]; readonly types?: readonly string[] }>> = {
  ...Object.fromEntries(CHAIN.map((folder) => [folder, { all: upTo(folder) }])),
  // Which profile is stored is for the inference to say, by a table of its own.
  plan: { all: [...upTo('plan'), 'inference', 'likelihoods'] },
  machines: { all: [...upTo('machines'), 'inference', 'likelihoods'] },
  case: { all: [...upTo('case'), 'inference', 'likelihoods'] },
  // The inference knows steps and causes by their ids only.
  inference: { all: ['inference'] },
  calculators: { all: ['calculators', 'compute', 'rig'], types: ['steps'] },
  figures: { all: ['figures', 'calculators', 'compute'] },
  chart: { all: ['chart', 'inference', 'likelihoods', ...upTo('case')] },
  search: { all: ['search', 'calculators', 'content', 'inference', 'likelihoods', ...upTo('case')] },
  sound: { all: ['sound', 'compute'] },
  steps: { all: upTo('steps'), types: ['sound'] },
  world: { all: ['world', 'sound', ...upTo('steps')], types: ['causes'] },
  observe: { all: ['observe', 'world', 'sound', ...upTo('steps')] },
  likelihoods: { all: ['likelihoods', 'causes', 'inference'], types: ['machines'] },
  // Bikes and people that only the proof knows must not shape a table.
  survey: { all: ['survey', 'likelihoods', 'inference', 'observe', 'world', 'sound', ...upTo('case')] },
  // The proof plays whole cases against the circuit; no page loads it.
  proof: { all: ['proof', 'survey', 'likelihoods', 'inference', 'observe', 'world', 'sound', ...upTo('case')] },
  browser: { all: ['browser', 'case', 'rig'], types: ['machines'] },
  components: {
    all: [...upTo('components'), 'calculators', 'figures', 'search', 'inference', 'likelihoods', 'sound', 'browser'],
  },
  layouts: { all: [...upTo('components'), 'layouts', 'browser', 'styles', 'assets'] },
  pages: {
    all: [
      ...upTo('pages'),
      'calculators',
      'chart',
      'search',
      'content',
      'tools',
      'layouts',
      'sound',
      'browser',
      'styles',
      'assets',
    ],
  },
  content: { all: [...upTo('components'), 'sound', 'assets'] },
};
/** Files that run while the site is built, or alone: they are not part of it. */
const OUTSIDE = ['tools', 'sw', 'public', 'styles', 'assets', '(root)'];
/** The only folders that may touch the page; everything else runs in plain Node. */
const TOUCH_THE_PAGE = ['browser', 'components', 'pages', 'layouts', ...OUTSIDE];
const PLAIN = [
  'compute',
  'rig',
  'steps',
  'causes',
  'plan',
  'calculators',
  'figures',
  'chart',
  'search',
  'machines',
  'case',
  'sound',
  'world',
  'observe',
  'inference',
  'likelihoods',
  'survey',
  'proof',
];

const folderOf = (file: string): string => {
  const [top = '', second = ''] = file.split('/');
  if (top !== 'src') return top;
  return file.split('/').length > 2 ? second : '(root)';
};

interface Arrow {
  readonly to: string;
  readonly typesOnly: boolean;
}
const IMPORTS =
  /(?:\b(?:import|export)\s+(?<what>[^'";]*?)\s*\bfrom\s*|\bimport\s*\(?\s*)(?:\/\*[^*]*\*\/\s*)?(['"])(?<from>\.[^'"]*)\2/g;

/** The files that a file imports by a relative path, in whatever way. */
const arrowsOf = (file: string, text: string): readonly Arrow[] =>
  [...text.matchAll(IMPORTS)].map(({ groups: { what = '', from = '' } = {} }) => {
    const names = what
      .replace(/[{}]/g, '')
      .split(',')
      .map((name) => name.trim())
      .filter(Boolean);
    const typesOnly = what.startsWith('type ') || (names.length > 0 && names.every((name) => name.startsWith('type ')));
    return { to: posix.join(posix.dirname(file), from), typesOnly };
  });

/** What is wrong with the imports of a file: a sentence for each arrow that points the wrong way. */
function wrongArrows(file: string, text: string): readonly string[] {
  const folder = folderOf(file);
  if (OUTSIDE.includes(folder)) return [];
  const may = MAY_IMPORT[folder];
  if (!may) return [`${file}: the folder ${folder} has no place among the others yet`];
  return arrowsOf(file, text).flatMap(({ to, typesOnly }) => {
    const target = folderOf(to);
    if (may.all.includes(target) || (typesOnly && may.types?.includes(target))) return [];
    const how = may.types?.includes(target) ? 'may import only types of' : 'may not import';
    return [`${file}: ${folder} ${how} ${target} (${to})`];
  });
}

/** It writes files with imports in them. */
const WRITES_IMPORTS = 'src/tools/make-likelihoods.ts';
/** What makes the tables of what causes show. */
const TABLE_TOOLS = ['src/tools/make-likelihoods.ts', 'src/tools/likelihoods-worker.ts'];
const isStrange = (file: string): boolean => /^src\/proof\/strange(\/|-|\.)/.test(file);

/** Every file that is loaded with a file, however far behind it. Types are erased, and load nothing. */
function reachedFrom(file: string, seen = new Set<string>()): ReadonlySet<string> {
  for (const { to, typesOnly } of arrowsOf(file, sourceOf.get(file) ?? ''))
    if (!typesOnly && !seen.has(to)) {
      seen.add(to);
      reachedFrom(to, seen);
    }
  return seen;
}

const PAGE = new Set(['document', 'window', 'localStorage', 'sessionStorage', 'navigator', 'location']);

/** Names of the page that a file uses as globals, not as names of its own fields. */
function pageGlobals(file: string, text: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && PAGE.has(node.text)) {
      const { parent } = node;
      const isField = ts.isPropertyAccessExpression(parent) && parent.name === node;
      const onGlobal = isField && parent.expression.getText() === 'globalThis';
      const isName =
        ((ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node) ||
        (ts.isBindingElement(parent) && parent.propertyName === node);
      if (onGlobal || !(isField || isName)) found.push(`${file}: ${node.text}`);
    }
    ts.forEachChild(node, visit);
  };
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind));
  return found;
}

const FILES = ['src', 'machines', 'content'].flatMap((top) =>
  readdirSync(top, { recursive: true, encoding: 'utf8' })
    .map((name) => posix.join(top, name.replaceAll('\\', '/')))
    .filter((name) => /\.(tsx?|astro|mdx?|mjs|js)$/.test(name)),
);
const sourceOf = new Map(FILES.map((file) => [file, readFileSync(file, 'utf8')]));

describe('the imports of src and machines', () => {
  it('point one way: compute ← rig ← steps ← causes ← plan ← machines ← case ← components ← pages', () => {
    expect([...sourceOf].flatMap(([file, text]) => wrongArrows(file, text))).toEqual([]);
  });
  it('lead from no table to the people and bikes that only the proof knows', () => {
    const makers = [...FILES.filter((file) => folderOf(file) === 'survey'), ...TABLE_TOOLS];
    expect(makers.length).toBeGreaterThan(TABLE_TOOLS.length + 3);
    const strange = makers.flatMap((file) =>
      [...reachedFrom(file)].filter(isStrange).map((reached) => `${file} reaches ${reached}`),
    );
    expect(strange).toEqual([]);
    // The proof does, so this looks where there is something to find.
    expect([...reachedFrom('src/proof/modes.ts')].some(isStrange)).toBe(true);
  });
  it('load all steps at once only in tools, observers and the proof', () => {
    const who = [...sourceOf].filter(([file, text]) =>
      arrowsOf(file, text).some(({ to, typesOnly }) => to === 'src/steps/all.ts' && !typesOnly),
    );
    const folders = who.map(([file]) => folderOf(file));
    expect(folders.filter((folder) => !['tools', 'observe', 'proof', 'world'].includes(folder))).toEqual([]);
  });
  it('lead to files that exist', () => {
    const missing = [...sourceOf].flatMap(([file, text]) =>
      folderOf(file) === 'sw' || file === WRITES_IMPORTS
        ? []
        : arrowsOf(file, text).filter(({ to }) => /\.(tsx?|astro|mdx?)$/.test(to) && !sourceOf.has(to)),
    );
    expect(missing).toEqual([]);
  });
  it('were really read: every folder of the chain has files, and nearly all of them import something', () => {
    for (const folder of CHAIN) expect(FILES.filter((file) => folderOf(file) === folder).length).toBeGreaterThan(2);
    expect([...sourceOf].flatMap(([file, text]) => arrowsOf(file, text)).length).toBeGreaterThan(300);
  });
});

describe('the check of an import', () => {
  const first = (file: string, text: string) => wrongArrows(file, text)[0];

  it('finds an arrow the wrong way, however it is written', () => {
    const wrong = 'src/compute/gain.ts: compute may not import steps (src/steps/unit/rear-pair.ts)';
    for (const line of [
      "import { rearPair } from '../steps/unit/rear-pair.ts';",
      "import type { Step } from '../steps/unit/rear-pair.ts';",
      "import {\n  bandOf,\n  type Band,\n} from '../steps/unit/rear-pair.ts';",
      "import * as volts from '../steps/unit/rear-pair.ts';",
      "import '../steps/unit/rear-pair.ts';",
      "export { rearPair } from '../steps/unit/rear-pair.ts';",
      "export * from '../steps/unit/rear-pair.ts';",
      "const { rearPair } = await import('../steps/unit/rear-pair.ts');",
      'import { rearPair } from "../steps/unit/rear-pair.ts";',
    ]) {
      expect(wrongArrows('src/compute/gain.ts', line)).toEqual([wrong]);
    }
  });
  it('lets an arrow the right way pass', () => {
    expect(wrongArrows('src/steps/runs/ohms.ts', "import { coilBandOhm } from '../../compute/impedance.ts';")).toEqual(
      [],
    );
    expect(wrongArrows('machines/kit.ts', "import type { Rig } from '../src/rig/rig.ts';")).toEqual([]);
    expect(wrongArrows('src/case/link.ts', "import { flow } from '../../machines/machine.ts';")).toEqual([]);
    expect(wrongArrows('src/pages/find/x/index.astro', "import X from '../../../components/flows/X.tsx';")).toEqual([]);
  });
  it('tells a type from a value', () => {
    expect(wrongArrows('src/steps/step.ts', "import type { TONES } from '../sound/tone.ts';")).toEqual([]);
    expect(wrongArrows('src/steps/step.ts', "import { type TONES } from '../sound/tone.ts';")).toEqual([]);
    expect(first('src/steps/step.ts', "import { TONES } from '../sound/tone.ts';")).toMatch(/only types of sound/);
    expect(first('src/steps/step.ts', "import { type T, TONES } from '../sound/tone.ts';")).toMatch(/only types/);
    expect(first('src/browser/x.ts', "import { flow } from '../../machines/machine.ts';")).toMatch(
      /only types of machines/,
    );
  });
  it('finds each of the forbidden ways', () => {
    expect(first('src/rig/rig.ts', "import { x } from '../causes/cause.ts';")).toMatch(/rig may not import causes/);
    expect(first('src/causes/x.ts', "import { x } from '../../machines/machine.ts';")).toMatch(
      /may not import machines/,
    );
    expect(first('src/causes/x.ts', "import { x } from '../inference/table.ts';")).toMatch(/may not import inference/);
    expect(first('src/inference/x.ts', "import { x } from '../steps/step.ts';")).toMatch(
      /inference may not import steps/,
    );
    expect(first('src/likelihoods/x.ts', "import { x } from '../steps/step.ts';")).toMatch(
      /likelihoods may not import steps/,
    );
    expect(first('src/survey/x.ts', "import { x } from '../proof/bikes.ts';")).toMatch(/survey may not import proof/);
    expect(first('src/components/x.ts', "import { x } from '../proof/bikes.ts';")).toMatch(/may not import proof/);
    expect(first('src/components/x.ts', "import { x } from '../survey/survey.ts';")).toMatch(/may not import survey/);
    expect(first('src/plan/x.ts', "import { x } from '../../machines/kit.ts';")).toMatch(/may not import machines/);
    expect(first('src/causes/x.ts', "import { x } from '../plan/facts.ts';")).toMatch(/causes may not import plan/);
    expect(first('machines/x.ts', "import { x } from '../src/case/replay.ts';")).toMatch(
      /machines may not import case/,
    );
    expect(first('src/case/x.ts', "import { x } from '../browser/storage.ts';")).toMatch(/case may not import browser/);
    expect(first('src/components/x.tsx', "import X from '../layouts/Site.astro';")).toMatch(/may not import layouts/);
    expect(first('src/sound/x.ts', "import { x } from '../steps/step.ts';")).toMatch(/sound may not import steps/);
    expect(first('src/world/x.ts', "import { x } from '../causes/all.ts';")).toMatch(/may import only types of causes/);
    expect(first('src/steps/x.ts', "import { x } from '../inference/table.ts';")).toMatch(/may not import inference/);
    expect(first('src/world/x.ts', "import { x } from '../observe/x.ts';")).toMatch(/world may not import observe/);
    expect(first('src/components/x.ts', "import { x } from '../observe/x.ts';")).toMatch(/may not import observe/);
    expect(first('src/observe/x.ts', "import { x } from '../inference/table.ts';")).toMatch(/may not import inference/);
    expect(first('src/case/x.ts', "import { x } from '../tools/serve.ts';")).toMatch(/case may not import tools/);
  });
  it('asks for a place for a folder that it does not know', () => {
    expect(first('src/helpers/x.ts', '')).toBe(
      'src/helpers/x.ts: the folder helpers has no place among the others yet',
    );
  });
});

describe('everything but browser, components, pages and layouts', () => {
  it('leaves the page alone: no document, window, storage, navigator or location', () => {
    const plain = [...sourceOf].filter(([file]) => /\.tsx?$/.test(file) && !TOUCH_THE_PAGE.includes(folderOf(file)));
    expect(plain.length).toBeGreaterThan(60);
    expect(plain.flatMap(([file, text]) => pageGlobals(file, text))).toEqual([]);
  });
  it('would be told apart from a field that only has such a name', () => {
    expect(pageGlobals('src/case/x.ts', 'location.href = "/"; const t = window.name;')).toEqual([
      'src/case/x.ts: location',
      'src/case/x.ts: window',
    ]);
    expect(pageGlobals('src/case/x.ts', 'globalThis.localStorage.clear();')).toEqual(['src/case/x.ts: localStorage']);
    expect(
      pageGlobals('src/case/x.ts', 'const a = { document: 1 }; a.document; type T = { location: string };'),
    ).toEqual([]);
    expect(pageGlobals('src/case/x.ts', '// the document\nconst s = "window";')).toEqual([]);
  });
  it('is loaded by plain Node, file by file', () => {
    const files = FILES.filter((file) => /\.ts$/.test(file) && PLAIN.includes(folderOf(file)));
    expect(files.length).toBeGreaterThan(60);
    const script = `for (const file of ${JSON.stringify(files)}) {
      try { await import(${JSON.stringify(`file://${process.cwd()}/`)} + file); }
      catch (error) { console.log(file + ': ' + error.message); }
    }`;
    const { stdout, stderr, status } = spawnSync(process.execPath, ['--input-type=module', '--eval', script], {
      encoding: 'utf8',
    });
    expect(stdout).toBe('');
    expect(status, stderr).toBe(0);
  });
});
