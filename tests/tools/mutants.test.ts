import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { CONDITIONS } from '../../src/steps/conditions.ts';
import { TEST_POINTS } from '../../src/steps/test-points.ts';
import { changed, KINDS, mayMutate, mutantsOf } from '../../src/tools/mutate/mutants.ts';

const NAMES = {
  cautions: Object.keys(CAUTIONS),
  points: Object.keys(TEST_POINTS),
  conditions: Object.keys(CONDITIONS),
};
const all = (source: string, file = 'src/steps/a.ts') =>
  mutantsOf(file, source, NAMES).map((mutant) => changed(source, mutant));

describe('the changes of a source', () => {
  it('take each caution out of a list, put another in its place, and cut the list in half', () => {
    expect(all("const a = { cautions: ['hot', 'cell'] };")).toEqual([
      "const a = { cautions: ['cell'] };",
      `const a = { cautions: ['${next('hot')}', 'cell'] };`,
      "const a = { cautions: ['hot'] };",
      `const a = { cautions: ['hot', '${next('cell')}'] };`,
      "const a = { cautions: ['hot'] };",
    ]);
  });
  it('change the probes over, move each, and put both at one place', () => {
    const made = all("const a = { probes: { red: 'amp-plus', black: 'frame' } };");
    expect(made).toContain("const a = { probes: { red: 'frame', black: 'amp-plus' } };");
    expect(made).toContain("const a = { probes: { red: 'amp-plus', black: 'amp-plus' } };");
    expect(made).toHaveLength(4);
  });
  it('leave a repair undone, do another one, and halve its numbers', () => {
    const made = all(
      "const a = { repair: [{ do: 'renew-holder', fuseA: most(f) }, { do: 'cool-amp' }] };",
      'src/causes/a.ts',
    );
    expect(made).toContain("const a = { repair: [{ do: 'cool-amp' }] };");
    expect(made).toContain("const a = { repair: [{ do: 'cool-amp', fuseA: most(f) }, { do: 'cool-amp' }] };");
    expect(made).toContain("const a = { repair: [{ do: 'renew-holder', fuseA: (most(f)) / 2 }, { do: 'cool-amp' }] };");
  });
  it('call likely what is proved', () => {
    const file = 'src/inference/certainty.ts';
    expect(all("const of = () => 'proved';", file)).toEqual(["const of = () => 'likely';"]);
    expect(all('const PROVED_SHARE = 0.95;', file)).toEqual(['const PROVED_SHARE = 0.475;']);
  });
  it('are of every kind in this project, and each of them can be read', () => {
    const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
      .map((file) => `src/${file.replaceAll('\\', '/')}`)
      .filter(mayMutate);
    const found = files.flatMap((file) => {
      const source = readFileSync(file, 'utf8');
      return mutantsOf(file, source, NAMES).map((mutant) => ({ mutant, source }));
    });
    expect(new Set(found.map(({ mutant }) => mutant.kind))).toEqual(new Set(KINDS));
    expect(found.length).toBeGreaterThan(600);
    for (const { mutant, source } of found.filter((_, i) => i % 10 === 0)) {
      const { diagnostics = [] } = ts.transpileModule(changed(source, mutant), {
        fileName: mutant.file,
        compilerOptions: { jsx: ts.JsxEmit.Preserve },
        reportDiagnostics: true,
      });
      expect(diagnostics.length, JSON.stringify(mutant)).toBe(0);
    }
  });
});

const next = (one: string) => NAMES.cautions[NAMES.cautions.indexOf(one) + 1];
