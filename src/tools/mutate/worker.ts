import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createVitest, type TestSpecification } from 'vitest/node';
import { changed, type Mutant } from './mutants.ts';

/* Runs the tests for one change after the other, in a copy of the project of its own. */

const root = process.argv[2] as string;
const vitest = await createVitest('test', {
  root,
  watch: false,
  project: ['unit'],
  reporters: [{}],
  maxWorkers: 1,
  fileParallelism: false,
});
const known = new Map<string, TestSpecification>();

/** Whether a test file is green. What fails for want of a machine that runs it is neither green nor red. */
async function isGreen(test: string): Promise<boolean> {
  const spec = known.get(test) ?? (await vitest.globTestSpecifications([test]))[0];
  if (!spec) throw new RangeError(`test must be a file of the project, got ${test}`);
  known.set(test, spec);
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications([spec]);
  const isRed = testModules.some(
    (module) => module.errors().length > 0 || [...module.children.allTests('failed')].length > 0,
  );
  const isDone = testModules.length > 0 && testModules.every((module) => module.state() !== 'pending');
  if (!isDone || (unhandledErrors.length > 0 && !isRed))
    throw new Error(`${test} could not be run: ${unhandledErrors.map(String).join('; ')}`);
  return !isRed;
}

/** The first of the tests that a change turns red; null where none does. */
async function noticedBy(mutant: Mutant | null, tests: readonly string[]): Promise<string | null> {
  const path = mutant && join(root, mutant.file);
  const source = path && readFileSync(path, 'utf8');
  try {
    if (mutant && path && source !== null) {
      writeFileSync(path, changed(source, mutant));
      vitest.invalidateFile(path);
    }
    for (const test of tests) if (!(await isGreen(test))) return test;
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
}
process.on('message', (asked: Asked | 'end') => {
  if (asked === 'end') void vitest.close().then(() => process.exit(0));
  else
    noticedBy(asked.mutant, asked.tests).then(
      (test) => process.send?.({ test }),
      (error: unknown) => process.send?.({ error: String(error) }),
    );
});
process.send?.('ready');
