// Brings node_modules in line with the lock file before any other command, in milliseconds when nothing is to do.
// Plain JavaScript: it runs on whatever Node is on the machine, before the project's own pinned Node is installed.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const read = (file) => {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return null;
  }
};
const want = read('package-lock.json');
// npm writes this file last, so an interrupted install has none.
const have = read('node_modules/.package-lock.json');
const same =
  want &&
  have &&
  Object.entries(want).every(
    ([key, p]) => key === '' || p.optional || p.devOptional || have[key]?.version === p.version,
  ) &&
  Object.entries(have).every(([key, p]) => want[key]?.version === p.version);
if (!same) {
  const args = ['ci', '--include=dev', '--loglevel=error'];
  const npm = process.env.npm_execpath;
  const run = npm
    ? spawnSync(process.execPath, [npm, ...args], { stdio: 'inherit' })
    : spawnSync('npm', args, { stdio: 'inherit', shell: true });
  process.exitCode = run.status ?? 1;
}
