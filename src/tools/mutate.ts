import { type ChildProcess, execFileSync, fork } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { drawFrom } from '../observe/draw.ts';
import { CAUTIONS } from '../steps/cautions.ts';
import { CONDITIONS } from '../steps/conditions.ts';
import { TEST_POINTS } from '../steps/test-points.ts';
import { KINDS, type Kind, type Mutant, mayMutate, mutantsOf } from './mutate/mutants.ts';
import type { Asked } from './mutate/worker.ts';

/*
 * npm run mutate [-- --json] [--seed 1] [--sample 240] [--kind caution] [--file src/causes]
 *
 * Changes cautions, certainties, probes and repair actions, one at a time, and runs the tests that hold rules about them.
 * What lives was noticed by none. No test among them is a copy of the data that is changed.
 */

const { values } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    seed: { type: 'string', default: '1' },
    sample: { type: 'string', default: '240' },
    kind: { type: 'string' },
    file: { type: 'string', default: '' },
  },
});

/** A test that has rules, and the files that it can notice a change of. */
type Rules = readonly [test: string, of: RegExp];
const OF_ALL = /^src\/steps\/[^/]+\.ts$|^src\/components\/caution\//;
const OF_STEPS = new RegExp(`${OF_ALL.source}|^src/steps/`);
const OF_CAUSES = new RegExp(`${OF_ALL.source}|^src/causes/`);

/** The tests that have rules about each kind, the likeliest to notice first. */
const TESTS: Readonly<Record<Kind, readonly Rules[]>> = {
  caution: [
    ['tests/steps/cautions.test.ts', OF_STEPS],
    ['tests/causes/cautions.test.ts', OF_CAUSES],
    ['tests/causes/action-cautions.test.ts', new RegExp(`${OF_ALL.source}|^src/causes/[^/]+\\.ts$`)],
    ['tests/plan/cautions.test.ts', OF_STEPS],
    ['tests/components/caution/signal-words.test.tsx', OF_ALL],
  ],
  certainty: [
    ['tests/inference/certainty.test.ts', /^src\/inference\//],
    ['tests/components/fault/cause-view.test.tsx', /^src\//],
  ],
  probe: [['tests/steps/probes.test.ts', /^src\/steps\//]],
  repair: [
    ['tests/causes/words-and-deeds.test.ts', /^src\/causes\//],
    ['tests/causes/cures.test.ts', /^src\/causes\//],
    ['tests/causes/cautions.test.ts', /^src\/causes\//],
  ],
};
const testsOf = (kinds: readonly Kind[], file?: string): readonly string[] => [
  ...new Set(
    kinds.flatMap((kind) => TESTS[kind].flatMap(([test, of]) => (file === undefined || of.test(file) ? [test] : []))),
  ),
];
const WORKERS = 2;
/** So often a change is tried again, in a fresh copy, where its tests could not be run. */
const TRIES = 3;

const root = resolve(import.meta.dirname, '../..');
const files = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: root, encoding: 'utf8' })
  .split('\n')
  .filter((file) => /^(src|tests|machines|content)\/|^[^/]+\.(json|ts|mjs)$/.test(file));

/** A copy of the project to change, with the packages of this one. */
function copyOf(folder: string): string {
  for (const file of files) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    cpSync(join(root, file), join(folder, file));
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}

/** So many of a list, as a seed chooses them. */
function sampleOf<T>(all: readonly T[], count: number, seed: number): readonly T[] {
  const draw = drawFrom('mutate', seed);
  return all
    .map((one) => ({ one, at: draw() }))
    .toSorted((a, b) => a.at - b.at)
    .slice(0, count)
    .map(({ one }) => one);
}

const inWords = ({ file, line, kind, how, was, text }: Mutant): string =>
  `${file}:${line} ${kind} ${how}: ${was}${text === '' ? '' : ` → ${text.slice(0, 40)}`}`;

interface Reply {
  readonly test?: string | null;
  readonly error?: string;
}
const ask = (worker: ChildProcess, asked: Asked): Promise<Reply> =>
  new Promise((done) => {
    worker.once('message', (reply) => done(reply as Reply));
    worker.send(asked);
  });

/** Whether tests are green without a change: only then does a red one say something of a change. */
async function areGreen(worker: ChildProcess, tests: readonly string[], names?: string): Promise<boolean> {
  const { test, error } = await ask(worker, { mutant: null, tests, ...(names && { names }) });
  if (test || error) console.log(`without a change: ${error ?? `${test} is red`}`);
  return error === undefined && !test;
}

/** The name of what a file is about, as the tests name it: a cause or a step. One without a hyphen is a plain word, too. */
const idsIn = (file: string): readonly string[] =>
  [...readFileSync(join(root, file), 'utf8').matchAll(/^ {2,4}id: '([^']+-[^']+)'/gm)].flatMap(([, id]) => id ?? []);
const OWNERS: ReadonlyMap<string, readonly string[]> = new Map(
  files.filter((file) => /^src\/(steps|causes)\/[^/]+\//.test(file)).map((file) => [file, idsIn(file)]),
);

/** The tests that speak of what a file is about, and those that speak of no other step or cause. */
function namesFor(file: string): string | undefined {
  const own = OWNERS.get(file);
  if (!own?.length) return undefined;
  const others = [...OWNERS.values()].flat().filter((id) => !own.includes(id));
  return `(${own.join('|')})|^(?!.*(?<![a-z-])(${others.join('|')})(?![a-z-]))`;
}

/** The test that notices a change, of those that can see it: those of its own cause or step first, then all of them. */
async function noticedBy(worker: ChildProcess, mutant: Mutant): Promise<Reply> {
  const [names, tests] = [namesFor(mutant.file), testsOf([mutant.kind], mutant.file)];
  const reply = await ask(worker, { mutant, tests, ...(names && { names }) });
  return names && reply.test === null ? ask(worker, { mutant, tests }) : reply;
}

async function started(folder: string): Promise<ChildProcess> {
  const worker = fork(join(import.meta.dirname, 'mutate/worker.ts'), [copyOf(folder)], {
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
  await new Promise((ready) => worker.once('message', ready));
  return worker;
}

const names = {
  cautions: Object.keys(CAUTIONS),
  points: Object.keys(TEST_POINTS),
  conditions: Object.keys(CONDITIONS),
};
const all = files
  .filter((file) => mayMutate(file) && file.startsWith(values.file))
  .flatMap((file) => mutantsOf(file, readFileSync(join(root, file), 'utf8'), names))
  .filter(({ kind }) => values.kind === undefined || kind === values.kind);
const kinds = KINDS.filter((kind) => all.some((mutant) => mutant.kind === kind));
const chosen = sampleOf(all, Number(values.sample), Number(values.seed));
console.log(
  `${chosen.length} of ${all.length} changes: ${kinds.map((kind) => `${all.filter((one) => one.kind === kind).length} ${kind}`).join(', ')}`,
);

const folder = mkdtempSync(join(tmpdir(), 'mutate-'));
const lived: Mutant[] = [];
let [noticed, copies] = [0, 0];
const fresh = () => started(join(folder, `${copies++}`));
const queue = [...chosen];
const tests = testsOf(kinds);
const began = performance.now();

/** One change after the other. At the end the tests of the last one are green without it, or nothing that was noticed counts. */
async function work(): Promise<void> {
  let worker = await fresh();
  let last: Mutant | undefined;
  const isNoticed = async (mutant: Mutant): Promise<boolean> => {
    for (let tries = 0; tries < TRIES; tries++) {
      const { test, error } = await noticedBy(worker, mutant);
      if (error === undefined) return test !== null;
      console.log(error);
      worker.kill();
      worker = await fresh();
    }
    throw new Error(`${inWords(mutant)} could not be tried`);
  };
  for (let mutant = queue.shift(); mutant; mutant = queue.shift()) {
    last = mutant;
    if (await isNoticed(mutant)) noticed++;
    else {
      lived.push(mutant);
      console.log(`lived: ${inWords(mutant)}`);
    }
    const tried = noticed + lived.length;
    if (tried % 20 === 0) console.log(`${tried} of ${chosen.length} tried`);
  }
  if (last && !(await areGreen(worker, testsOf([last.kind], last.file), namesFor(last.file))))
    throw new Error('The tests must be green after all changes are undone');
  worker.send('end');
}

try {
  const first = await fresh();
  if (!(await areGreen(first, tests))) throw new Error(`The tests must be green to begin with: ${tests.join(', ')}`);
  first.send('end');
  await Promise.all(Array.from({ length: WORKERS }, work));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
console.log(`${noticed} of ${chosen.length} noticed in ${Math.round((performance.now() - began) / 6000) / 10} minutes`);
if (values.json) console.log(JSON.stringify({ total: chosen.length, noticed, lived: lived.map(inWords) }));
