import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { faultsOf } from './check-html.ts';
import { finishFlowPage, flowBytes } from './flow-pages.ts';
import { MODULE_FILES } from './module-files.ts';
import { pageSize, sizeTable } from './page-size.ts';
import { siteBase, siteFolder } from './site.ts';
import { type BuiltFile, fillWorker, workerLists } from './worker-lists.ts';

/** After the build: gives flow pages their files, refuses pages that the browser would block in part, writes the worker, and prints the sizes. */

const folder = siteFolder();
const base = siteBase();

const noted = join(folder, MODULE_FILES);
const modules = JSON.parse(await readFile(noted, 'utf8')) as Record<string, string>;
await rm(noted);

const files: BuiltFile[] = [];
for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
  if (!entry.isFile()) continue;
  const path = join(entry.parentPath, entry.name);
  files.push({ path: relative(folder, path).split(sep).join('/'), bytes: await readFile(path) });
}

const text = new Map(files.map(({ path, bytes }) => [path, bytes] as const));
const fileOf = (path: string) => {
  const bytes = text.get(path);
  return bytes && Buffer.from(bytes).toString('utf8');
};
const pages = files
  .filter(({ path }) => path.endsWith('.html'))
  .map(({ path }) => ({ path, html: finishFlowPage(fileOf(path) ?? '', base, fileOf, modules) }));
for (const { path, html } of pages) {
  if (html === fileOf(path)) continue;
  await writeFile(join(folder, path), html);
  text.set(path, Buffer.from(html));
}

const faults = pages.flatMap(({ path, html }) => faultsOf(html).map((fault) => `${path}: ${fault}`));
if (faults.length > 0) {
  console.error(faults.join('\n'));
  process.exit(1);
}

await writeFile(
  join(folder, 'sw.js'),
  fillWorker(await readFile('src/sw/sw.js', 'utf8'), workerLists([...text].map(([path, bytes]) => ({ path, bytes })))),
);

console.log(`Sizes in bytes, gzip. Script is everything that a page loads by itself.\n`);
console.log(sizeTable(pages.map(({ path, html }) => pageSize(path, html, base, fileOf))));
console.log('\nScript of the flow pages: until the second question, and all that they ever load.\n');
for (const { page, bytesFirst, bytesAll } of flowBytes(pages, base, fileOf))
  console.log(`${page.padEnd(34)} ${String(bytesFirst).padStart(7)} ${String(bytesAll).padStart(7)}`);
