import { readdirSync, readFileSync } from 'node:fs';
import { basename, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { OBSERVED } from '../../src/observe/index.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { AMP_GROUPS } from '../../src/steps/plan/amp-groups.ts';
import type { Step } from '../../src/steps/step.ts';
import { eachOf } from '../../src/steps/subject.ts';

const filesOf = (root: string): readonly string[] =>
  readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.includes('/') && name.endsWith('.ts'));

const isStep = (it: unknown): it is Step => typeof it === 'object' && it !== null && 'ask' in it && 'outcomes' in it;
/** The constants of a file that are steps, and what its functions make of a group of amplifiers. */
async function stepsIn(file: string): Promise<readonly Step[]> {
  const names: Record<string, unknown> = await import(posix.join('../../src/steps', file));
  return Object.entries(names).flatMap(([name, it]) => {
    if (isStep(it)) return eachOf(it);
    return /^amp.*Step$/.test(name) && typeof it === 'function'
      ? Object.keys(AMP_GROUPS).map((group) => it(group))
      : [];
  });
}
const FILES = filesOf('src/steps');

describe('the folders of the steps', () => {
  it('hold one step a file, named by its id; one that is asked of each amplifier goes by the name for a single one', async () => {
    for (const file of FILES) {
      const steps = await stepsIn(file);
      if (steps.length > 0) expect(steps[0]?.id, file).toBe(basename(file, '.ts'));
      const names = new Set(steps.map(({ about, id }) => about?.step ?? id));
      expect([0, 1, Object.keys(AMP_GROUPS).length], file).toContain(names.size);
    }
  });
  it('hold no step that is missing among all steps, and all steps are there under their own name', async () => {
    const found = (await Promise.all(FILES.map(stepsIn))).flat().map(({ id }) => id);
    expect(found.toSorted()).toEqual(Object.keys(ALL_STEPS).toSorted());
    expect(found.length).toBeGreaterThan(100);
    for (const [id, step] of Object.entries(ALL_STEPS)) expect(step.id).toBe(id);
  });
  it('hold what a condition may name by its id, and nothing else: each constant has its row among the types', async () => {
    const ids = readFileSync('src/steps/ids.ts', 'utf8');
    const rows = [...ids.matchAll(/^ {2}'?([\w-]+)'?: typeof import\('\.\/([\w/-]+)\.ts'\)/gm)];
    for (const [, id, file = ''] of rows) expect(basename(file)).toBe(id);
    const hasConstant = async (file: string) =>
      Object.values(await import(posix.join('../../src/steps', file))).some(isStep) ? [file] : [];
    const constants = (await Promise.all(FILES.map(hasConstant))).flat();
    expect(rows.map(([, , file]) => `${file}.ts`).toSorted()).toEqual(constants.toSorted());
  });
  it('are mirrored by the observers, folder by folder', () => {
    const places = new Map(FILES.map((file) => [basename(file), posix.dirname(file)]));
    const observers = filesOf('src/observe').filter((file) => OBSERVED.includes(basename(file, '.ts')));
    for (const file of observers) expect(posix.dirname(file)).toBe(places.get(basename(file)));
    expect(observers.map((file) => basename(file, '.ts')).toSorted()).toEqual(OBSERVED.toSorted());
  });
});
