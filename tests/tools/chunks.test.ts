import { resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FAULT_FLOWS, FLOW_LIST } from '../../src/case/flows.ts';
import { sharedFiles } from '../../src/tools/chunks.ts';

/** Modules, what each imports at once, and those that somebody fetches by themselves. */
interface Graph {
  readonly imports: Readonly<Record<string, readonly string[]>>;
  readonly fetched?: readonly string[];
}

const at = (path: string) => resolve(path);
const OPENINGS = FLOW_LIST.map(([id]) => `machines/${id}.opening.ts`);
const WHOLES = FLOW_LIST.map(([id]) => `machines/${id}.ts`);
const LATES = FAULT_FLOWS.map(([id]) => `src/likelihoods/${id}.ts`);

/** The place of the file that each module goes into, by falling priority, and its name; none where it may go by itself. */
function placed({ imports, fetched = [] }: Graph): (module: string) => { at: number; name: string } | undefined {
  const byId = Object.fromEntries(Object.entries(imports).map(([id, own]) => [at(id), own.map(at)]));
  const gone = new Set(fetched.map(at));
  const modules = {
    getModuleInfo: (id: string) => ({
      importedIds: byId[id] ?? [],
      dynamicImporters: gone.has(id) ? ['somebody'] : [],
    }),
  };
  const groups = sharedFiles().toSorted((a, b) => b.priority - a.priority);
  return (module) => {
    for (const [i, group] of groups.entries()) {
      const name = group.name(at(module), modules);
      if (name !== null) return { at: i, name };
    }
    return undefined;
  };
}

describe('the files that modules share', () => {
  it('are one for what the page of any flow needs at once', () => {
    const fileOf = placed({
      imports: {
        'src/components/flow/wake.ts': ['page', 'both'],
        'src/case/replay-staged.ts': ['machine', 'stages'],
        'src/case/replay-rows.ts': ['machine'],
      },
    });
    const names = ['page', 'both', 'machine', 'stages'].map((module) => fileOf(module)?.name);
    expect(names).toEqual(['flow', 'flow', 'flow', 'flow']);
  });
  it('have a step that a flow opens with, and that others need later, where it is at once', () => {
    const [own = '', other = ''] = OPENINGS;
    const imports = { [own]: ['step'], [other]: ['other step'], 'src/components/flow/parts.ts': ['step', 'screen'] };
    const fileOf = placed({ imports, fetched: [own, other] });
    expect(fileOf('screen')?.name).toBe('screens');
    expect(fileOf('step')?.name).toBe('flow');
    expect(fileOf('other step')).toBeUndefined();
  });
  it('are one for what all fault flows fetch later, unless a plan needs it too', () => {
    const imports = Object.fromEntries([
      ...FAULT_FLOWS.map(([id], i) => [
        i === 0 ? `machines/${id}.ts` : `src/likelihoods/${id}.ts`,
        ['common', 'reading'],
      ]),
      ['machines/kit.ts', ['inference']],
      ...FLOW_LIST.flatMap(([id, { kind }]) => (kind === 'fault' ? [] : [[`machines/${id}.ts`, ['reading']]])),
    ]);
    const fileOf = placed({ imports, fetched: [...WHOLES, ...LATES] });
    expect(fileOf('common')?.name).toBe(fileOf('inference')?.name);
    expect(fileOf('reading')?.name).not.toBe(fileOf('inference')?.name);
  });
  it('leave what is fetched by itself, and what only one flow has, to the bundler', () => {
    const [one = '', two = ''] = WHOLES;
    const imports = { [one]: ['own', 'shared'], [two]: ['shared'] };
    const fileOf = placed({ imports, fetched: [one, two] });
    expect([one, two, 'own'].map(fileOf)).toEqual([undefined, undefined, undefined]);
    expect(fileOf('shared')).toBeDefined();
  });
  it('need only such as come before them, so that no two need each other', () => {
    const roots = [
      'src/components/seat/bind-seats.ts',
      'src/browser/case-store.ts',
      'src/components/tones/tones-entry.ts',
      'src/components/my-bike/my-bike-entry.ts',
      'src/components/flow/wake.ts',
      'src/case/replay-staged.ts',
      'src/case/replay-rows.ts',
      'src/components/flow/parts.ts',
      'src/components/fault/parts.ts',
      'src/components/plan/parts.ts',
      ...OPENINGS,
      ...WHOLES,
      ...LATES,
    ];
    const MODULES = 12;
    const inner = Array.from({ length: MODULES }, (_, i) => `module ${i}`);
    const some = (from: readonly string[]) => fc.subarray([...from], { maxLength: Math.min(4, from.length) });
    const graph = fc.tuple(...roots.map(() => some(inner)), ...inner.map((_, i) => some(inner.slice(i + 1))));
    fc.assert(
      fc.property(graph, (drawn) => {
        const imports = Object.fromEntries([...roots, ...inner].map((id, i) => [id, drawn[i] ?? []]));
        const fileOf = placed({ imports, fetched: roots });
        for (const module of inner)
          for (const needed of imports[module] ?? [])
            if (fileOf(module)) expect(fileOf(needed)?.at ?? Infinity).toBeLessThanOrEqual(fileOf(module)?.at ?? -1);
      }),
      { numRuns: 200 },
    );
  });
});
