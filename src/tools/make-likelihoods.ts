import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { PROVED_FLOWS } from '../case/flows.ts';
import { CAUSE_FILES, CAUSES } from '../causes/all.ts';
import { pack } from '../likelihoods/packed.ts';
import { makeTable } from '../survey/make-table.ts';
import { profileTable } from '../survey/profile-survey.ts';
import type { Found } from '../survey/survey.ts';
import { buildSteps, surveyOf } from '../survey/survey-of.ts';
import { sharedOut } from './shared-out.ts';

/*
 * npm run likelihoods [-- no-rear-sound]
 *
 * Makes what the causes of each complaint show anew from the model of the bike, or for one flow: a table, and the causes
 * that it names, for the page to load together. Needs neither to be there before. `stored-profile` makes the table of what
 * the stored profiles show.
 */

const FOLDER = 'src/likelihoods';
const only = process.argv[2];
const STORED_PROFILE = 'stored-profile';
const wanted = PROVED_FLOWS.filter(([id]) => only === undefined || id === only);
if (wanted.length === 0 && only !== STORED_PROFILE)
  throw new RangeError(`one of ${PROVED_FLOWS.map(([id]) => id).join(', ')}, or none for all`);

const nameOf = (id: string): string => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

/** A few bikes a time, so that no core is left with much when the others are done. */
const BIKES_A_SHARE = 5;

/** What is found on the bikes of a flow, in their order. */
const foundOn = async (flow: string, bikes: number): Promise<readonly Found[]> => {
  const shares = Array.from({ length: Math.ceil(bikes / BIKES_A_SHARE) }, (_, i) => i * BIKES_A_SHARE);
  const found = await sharedOut<object, readonly Found[]>(
    new URL('./likelihoods-worker.ts', import.meta.url),
    shares.map((first) => ({ flow, first, count: BIKES_A_SHARE })),
  );
  return found.flat();
};

/** Enough that each row was looked at some dozens of times. */
const BIKES_FOR_PROFILES = 1200;
if (only === undefined || only === STORED_PROFILE) {
  const packed = pack(profileTable(BIKES_FOR_PROFILES));
  writeFileSync(`${FOLDER}/${STORED_PROFILE}.json`, `${JSON.stringify(packed)}\n`);
  console.log(
    `${STORED_PROFILE}: ${Object.keys(packed.steps).length} steps, ${JSON.stringify(packed).length} characters`,
  );
}

for (const [id, listed] of wanted) {
  const startedAt = performance.now();
  const flow = await listed.load();
  const told = [...flow.told];
  const what = surveyOf(listed, flow, CAUSES);
  const table = makeTable(what, await foundOn(id, what.rigs.length), [...buildSteps(flow), ...told]);
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
