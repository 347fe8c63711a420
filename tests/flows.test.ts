import { readdirSync, readFileSync } from 'node:fs';
import { posix, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it, vi } from 'vitest';
import { flow } from '../machines/kit.ts';
import type { Late, StagedFlow } from '../machines/machine.ts';
import type { Opening } from '../machines/opening.ts';
import type { Flow } from '../machines/rows.ts';
import { FAULT_FLOWS, type FaultFlow, FLOW_LIST, FLOWS, PROVED_FLOWS } from '../src/case/flows.ts';
import { CAUSES } from '../src/causes/all.ts';
import { prove } from '../src/proof/prove.ts';
import { loadStages } from '../src/proof/stages.ts';
import { popRun } from '../src/steps/runs/pop-run.ts';
import { faderCentre } from '../src/steps/settings/fader-centre.ts';
import { rearControl } from '../src/steps/settings/rear-control.ts';
import { about } from '../src/steps/subject.ts';
import { lastChange } from '../src/steps/told/last-change.ts';
import { makeTable } from '../src/survey/make-table.ts';
import { lookOver } from '../src/survey/survey.ts';
import { surveyOf } from '../src/survey/survey-of.ts';

/*
 * All flows stand in one list. One more of a few steps, one of them asked of two axles, is put on it here, and nowhere
 * else: it must turn up wherever flows are taken.
 */

const CONTROLS = ['fader-or-balance-off', 'rear-control-off'];
const opening: Opening = { id: 'controls', title: 'A control', fitted: [], told: [lastChange] };
const controls = flow(opening, {
  look: [faderCentre, rearControl, popRun, about(popRun, 'front')],
  measure: [],
  safe: [],
  causes: CONTROLS,
  handsOver: [],
});
const added: FaultFlow = {
  ...FLOWS['no-rear-sound'],
  path: 'find/controls/',
  title: 'A control',
  complaints: { 'no-rear-sound': 1 },
  open: async () => opening,
  load: async () => controls,
  late: async () => tabled(),
};
function tabled(): Late {
  const what = surveyOf(added, controls, CAUSES, 1);
  return {
    table: makeTable(what, lookOver(what), [lastChange.id]),
    causes: Object.fromEntries(CAUSES.filter(({ id }) => CONTROLS.includes(id)).map((cause) => [cause.id, cause])),
  };
}

vi.mock(import('../src/case/flows.ts'), async (original) => {
  const real = await original();
  // The row is filled in late: what it is made of is not there yet when the list is.
  const row = new Proxy({}, { get: (_, name) => Reflect.get(added, name) });
  return {
    ...real,
    FLOWS: { ...real.FLOWS, controls: row },
    FLOW_LIST: [...real.FLOW_LIST, ['controls', row]],
    FAULT_FLOWS: [...real.FAULT_FLOWS, ['controls', row]],
    PROVED_FLOWS: [...real.PROVED_FLOWS, ['controls', row]],
  } as unknown as typeof real;
});

const ids = FLOW_LIST.map(([id]) => id as string);

describe('a flow that is put on the list', () => {
  it('is there', () => {
    expect(ids).toContain('controls');
    expect(FAULT_FLOWS.map(([id]) => id as string)).toContain('controls');
  });
  it('is proved', async () => {
    const stages = await loadStages();
    expect(Object.keys(stages)).toEqual(PROVED_FLOWS.map(([id]) => id));
    expect(stages['controls']?.flow).toBe(controls);
    const bikes = Array.from({ length: 6 }, (_, i) => i);
    const { exact } = prove(
      { flow: 'controls', complaints: added.complaints, seed: 1, faultsPerBike: 1, turns: 1, bikes, modes: ['exact'] },
      stages,
    );
    expect(exact?.cases).toBeGreaterThan(0);
  });
  it('gets a table of its causes', () => {
    const { rows, steps } = tabled().table;
    expect(new Set(rows.map(({ cause }) => cause))).toEqual(new Set([...CONTROLS, 'unthought-sound']));
    expect(Object.keys(steps).toSorted()).toEqual([
      'fader-centre',
      'last-change',
      'pop-run',
      'pop-run@front',
      'rear-control',
    ]);
  });
});

const sources = ['src', 'machines'].flatMap((top) =>
  readdirSync(top, { recursive: true, encoding: 'utf8' })
    .map((name) => posix.join(top, name.replaceAll('\\', '/')))
    .filter((name) => /\.(tsx?|astro|js|mjs)$/.test(name)),
);
const isFlow = (value: unknown): value is StagedFlow | Flow =>
  typeof value === 'object' &&
  value !== null &&
  'machine' in value &&
  'kind' in value &&
  (value.kind === 'staged' || value.kind === 'rows');
const inMachines = (
  await Promise.all(
    sources
      .filter((file) => file.startsWith('machines/'))
      .map(async (file) => {
        const module: Record<string, unknown> = await import(/* @vite-ignore */ pathToFileURL(resolve(file)).href);
        return Object.values(module)
          .filter(isFlow)
          .map((one) => [file, one] as const);
      }),
  )
).flat();

describe('the list of flows', () => {
  it('holds every flow that a file of machines gives, under its id, and no other', async () => {
    const own = FLOW_LIST.filter(([id]) => (id as string) !== 'controls');
    expect(own.map(([id]) => id as string).toSorted()).toEqual(inMachines.map(([, one]) => one.id).toSorted());
    for (const [id, row] of own) {
      const loaded = await row.load();
      expect(loaded.id).toBe(id);
      expect(inMachines.map(([, one]) => one.id)).toContain(loaded.id);
      expect(row.kind === 'fault' || row.kind === 'intake').toBe(loaded.kind === 'staged');
      const opening = await row.open();
      expect([loaded.id, loaded.title]).toEqual([opening.id, opening.title]);
      if ('fitted' in opening && loaded.kind === 'staged')
        expect(loaded.inOrder).toEqual([...opening.fitted, ...opening.told]);
      if ('states' in opening && loaded.kind === 'rows')
        expect(Object.entries(loaded.states).slice(0, Object.keys(opening.states).length)).toEqual(
          Object.entries(opening.states),
        );
    }
  });
  it('gives each an address of its own', () => {
    const paths = FLOW_LIST.map(([, { path }]) => path);
    expect(new Set(paths).size).toBe(paths.length);
    for (const path of paths) expect(path).toMatch(/^([a-z-]+\/)+$/);
  });
  it('is the only way to a flow: nothing else in the site loads one by its file', () => {
    const files = [...new Set(inMachines.map(([file]) => posix.basename(file)))];
    const byFile = sources.filter(
      (file) =>
        file !== 'src/case/flows.ts' && files.some((name) => readFileSync(file, 'utf8').includes(`machines/${name}`)),
    );
    expect(byFile).toEqual([]);
  });
  it('is what the pages are made from, the start page with them', () => {
    const pages = sources.filter((file) => file.startsWith('src/pages/')).map((file) => readFileSync(file, 'utf8'));
    expect(pages.some((text) => /getStaticPaths[^;]*FLOW_LIST/.test(text))).toBe(true);
    const start = readFileSync('src/pages/index.astro', 'utf8');
    const missing = inMachines.filter(([, { id }]) => !start.includes('FLOW_LIST') && !start.includes(`'${id}'`));
    expect(missing.map(([, { id }]) => id)).toEqual([]);
  });
  it('asks for a meter first wherever one is used', () => {
    for (const [, { id, kind, steps }] of inMachines)
      if (kind === 'staged' && [...steps.values()].some(({ tool }) => tool === 'meter'))
        expect([...steps.keys()], id).toContain('tools-at-hand');
  });
});

describe('the file of a flow', () => {
  const WRITTEN = PROVED_FLOWS.map(([id]) => id).filter((id) => (id as string) !== 'controls');
  it.each(WRITTEN)('of %s is read on one and a half screens, besides its imports', (id) => {
    const lines = readFileSync(`machines/${id}.ts`, 'utf8').split('\n');
    expect(lines.filter((line) => line.trim() !== '' && !line.startsWith('import ')).length).toBeLessThanOrEqual(150);
  });
});
