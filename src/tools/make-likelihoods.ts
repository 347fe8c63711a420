import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { FAULT_FLOWS } from '../case/flows.ts';
import { CAUSE_FILES, CAUSES } from '../causes/all.ts';
import { pack } from '../likelihoods/packed.ts';
import { makeTable } from '../survey/make-table.ts';
import { buildSteps, surveyOf } from '../survey/survey-of.ts';

/*
 * npm run likelihoods [-- no-rear-sound]
 *
 * Makes what the causes of each complaint show anew from the model of the bike, or for one flow: a table, and the causes
 * that it names, for the page to load together. Needs neither to be there before.
 */

const FOLDER = 'src/likelihoods';
const only = process.argv[2];
const wanted = FAULT_FLOWS.filter(([id]) => only === undefined || id === only);
if (wanted.length === 0) throw new RangeError(`one of ${FAULT_FLOWS.map(([id]) => id).join(', ')}, or none for all`);

const nameOf = (id: string): string => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

for (const [id, listed] of wanted) {
  const startedAt = performance.now();
  const flow = await listed.load();
  const told = [...flow.told];
  const table = makeTable(surveyOf(listed, flow, CAUSES), [...buildSteps(flow), ...told]);
  const packed = pack(table);
  writeFileSync(`${FOLDER}/${id}.json`, `${JSON.stringify(packed)}\n`);
  const causes = CAUSE_FILES.filter(([, cause]) => flow.causes.includes(cause.id));
  const imports = causes.map(([file, cause]) => `import { ${nameOf(cause.id)} } from '../causes/${file}';`);
  writeFileSync(
    `${FOLDER}/${id}.ts`,
    `${imports.join('\n')}
import { lateOf } from './late.ts';
import table from './${id}.json' with { type: 'json' };

/** Made by \`npm run likelihoods\`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [${causes.map(([, cause]) => nameOf(cause.id)).join(', ')}]);
`,
  );
  spawnSync('biome', ['check', '--write', `${FOLDER}/${id}.ts`], { stdio: 'inherit' });
  const seconds = ((performance.now() - startedAt) / 1000).toFixed(0);
  console.log(`${id}: ${table.rows.length} rows, ${JSON.stringify(packed).length} characters, ${seconds} s`);
}
