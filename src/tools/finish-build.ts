import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { asBuilt, builtFiles, pagesOf, textOf } from './built-site.ts';
import { faultsOf } from './check-html.ts';
import { finishFlowPage, flowBytes } from './flow-pages.ts';
import { MODULE_FILES } from './module-files.ts';
import { flowSizeTable, pageSize, sizeTable } from './page-size.ts';
import { siteBase, siteFolder } from './site.ts';
import { fillWorker, workerLists } from './worker-lists.ts';

/**
 * After the build: gives flow pages their files, refuses pages that the browser would block in part, writes the worker,
 * and prints the sizes.
 */

const folder = siteFolder();
const base = siteBase();

const files = await builtFiles(folder);
const fileOf = textOf(files);

const modules = JSON.parse(fileOf(MODULE_FILES) ?? '{}') as Record<string, string>;
files.delete(MODULE_FILES);
await rm(join(folder, MODULE_FILES), { force: true });

for (const { path, html } of pagesOf(files)) {
  const finished = finishFlowPage(html, base, fileOf, modules);
  if (finished === html) continue;
  await writeFile(join(folder, path), finished);
  files.set(path, Buffer.from(finished));
}
const pages = pagesOf(files);

const faults = pages.flatMap(({ path, html }) => faultsOf(html).map((fault) => `${path}: ${fault}`));
if (faults.length > 0) {
  console.error(faults.join('\n'));
  process.exit(1);
}

await writeFile(join(folder, 'sw.js'), fillWorker(await readFile('src/sw/sw.js', 'utf8'), workerLists(asBuilt(files))));

console.log(`Sizes in bytes, gzip. Script is everything that a page loads by itself.\n`);
console.log(sizeTable(pages.map(({ path, html }) => pageSize(path, html, base, fileOf))));
console.log(
  '\nScript of the flow pages: until the second question, and all that they can ever load; and what any page may.\n',
);
console.log(flowSizeTable(flowBytes(pages, base, fileOf)));
