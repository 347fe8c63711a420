import { spawnSync } from 'node:child_process';
import { findChromium } from './chromium.ts';

/** What `npm test` runs, in order, up to the first failure, each with its time. The site is built once for all. */

// Whatever npm put on the path is kept: it finds the pinned Node and the tools of the project.
const run = (command: string, env: NodeJS.ProcessEnv = {}) => {
  const { status } = spawnSync(command, { stdio: 'inherit', shell: true, env: { ...process.env, ...env } });
  return status === 0;
};

let chromium = '';
const findIt = () => {
  chromium = findChromium();
  return true;
};

const stages: readonly (readonly [name: string, passes: () => boolean])[] = [
  ['types and lint', () => run('npm run -s check')],
  ['chromium', findIt],
  ['build', () => run('npm run -s build')],
  ['tests', () => run('vitest run', { CHROMIUM: chromium, SIDESTAND_BUILT: '1' })],
];

const startedAt = performance.now();
const secondsSince = (then: number) => `${((performance.now() - then) / 1000).toFixed(1)} s`;

for (const [name, passes] of stages) {
  const begin = performance.now();
  let passed = false;
  try {
    passed = passes();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
  }
  console.log(`${passed ? 'passed' : 'FAILED'}: ${name}, ${secondsSince(begin)}\n`);
  if (!passed) process.exit(1);
}
console.log(`All passed in ${secondsSince(startedAt)}.`);
