import { parseArgs } from 'node:util';
import { KINDS } from '../search/document.ts';
import { finder } from '../search/find.ts';
import { indexFile } from '../search/index-file.ts';
import { articleHeads } from './article-heads.ts';
import { heard } from './heard.ts';

/*
 * npm run find -- "rear dead after reflash" [--json]
 *
 * What the search of the site finds for these words, best first, and the facts that the words give.
 */

const { values, positionals } = parseArgs({
  options: { json: { type: 'boolean', default: false } },
  allowPositionals: true,
});
const query = positionals.join(' ');
if (query.trim() === '') {
  console.error('Say what to look for, for example: npm run find -- "rear dead after reflash"');
  process.exit(1);
}
const found = finder(await indexFile(articleHeads(), heard()))(query);
if (values.json) console.log(JSON.stringify(found.map(({ id, kind, title, facts }) => ({ id, kind, title, facts }))));
else if (found.length === 0) console.log('Nothing fits. Fewer words, or other ones, may.');
for (const { id, kind, title, facts } of values.json ? [] : found) {
  const told = Object.entries(facts).map(([step, option]) => `${step}: ${option}`);
  console.log(`${KINDS[kind]}: ${title}  (${id})${told.length > 0 ? `\n    already said: ${told.join(', ')}` : ''}`);
}
