import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createVitest, type TestSpecification } from 'vitest/node';
import { changed, type Mutant } from './mutants.ts';

/*
 * Runs the tests for one change after the other, in a copy of the project of its own. What was loaded stays loaded, but
 * for what the change touches.
 */

const root = process.argv[2] as string;
const vitest = await createVitest('test', {
  root,
  watch: false,
  project: ['unit'],
  reporters: [{}],
  pool: 'threads',
  isolate: false,
  maxWorkers: 1,
  fileParallelism: false,
  bail: 1,
  testTimeout: 300_000,
});
const known = new Map<string, TestSpecification>();

/** Whether a test file is green, or those of its tests that a pattern names. What could not be run is neither green nor red. */
async function isGreen(test: string, names: RegExp | undefined): Promise<boolean> {
  const spec = known.get(test) ?? (await vitest.globTestSpecifications([test]))[0];
  if (!spec) throw new RangeError(`test must be a file of the project, got ${test}`);
  known.set(test, spec);
  spec.testNamePattern = names;
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications([spec]);
  // What ran before is in the list as well.
  const module = testModules.find(({ moduleId }) => moduleId === spec.moduleId);
  const failed = [...(module?.children.allTests('failed') ?? [])];
  const errors = failed.flatMap((one) => one.result().errors ?? []);
  if (!module || module.state() === 'pending' || errors.some(({ message }) => /timed out/.test(message)))
    throw new Error(`${test} could not be run: ${unhandledErrors.map(String).join('; ')}`);
  return failed.length === 0 && module.errors().length === 0;
}

/** The first of the tests that a change turns red; null where none does. */
async function noticedBy({ mutant, tests, names }: Asked): Promise<string | null> {
  const path = mutant && join(root, mutant.file);
  const source = path && readFileSync(path, 'utf8');
  const pattern = names === undefined ? undefined : new RegExp(names);
  try {
    if (mutant && path && source !== null) {
      writeFileSync(path, changed(source, mutant));
      vitest.invalidateFile(path);
    }
    for (const test of tests) if (!(await isGreen(test, pattern))) return test;
    return null;
  } finally {
    if (path && source !== null) {
      writeFileSync(path, source);
      vitest.invalidateFile(path);
    }
  }
}

export interface Asked {
  readonly mutant: Mutant | null;
  readonly tests: readonly string[];
  /** Only the tests with such a name: what they notice, all of them would. */
  readonly names?: string;
}
process.on('message', (asked: Asked | 'end') => {
  if (asked === 'end') void vitest.close().then(() => process.exit(0));
  else
    noticedBy(asked).then(
      (test) => process.send?.({ test }),
      (error: unknown) => process.send?.({ error: String(error) }),
    );
});
process.send?.('ready');
