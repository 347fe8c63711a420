import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { PROVED_FLOWS } from '../proof/flows.ts';
import { madeTable } from '../proof/made.ts';
import { packTable } from '../verdicts/made-table.ts';

/*
 * npm run suspects [-- amp-goes-off]
 *
 * Makes the tables of suspects anew from the circuit, or one of them, after a change of the model, of a step or of a flow.
 */

/** Where the made files find the shape of what is in them. */
const SHAPES = '../made-table.ts';

const only = process.argv[2];
const wanted = PROVED_FLOWS.filter(({ id }) => only === undefined || id === only);
if (wanted.length === 0) throw new RangeError(`one of ${PROVED_FLOWS.map(({ id }) => id).join(', ')}, or none for all`);

for (const proved of wanted) {
  const packed = packTable(madeTable(proved));
  writeFileSync(
    proved.table,
    `import { type PackedTable, unpackTable } from '${SHAPES}';

/** Made from the circuit by \`npm run suspects\`. Do not edit: change the model, the steps or the flow, and make it anew. */
const PACKED: PackedTable = ${JSON.stringify(packed)};

export const ${proved.tableName} = unpackTable(PACKED);
`,
  );
  spawnSync('biome', ['format', '--write', proved.table], { stdio: 'inherit' });
  console.log(`${proved.table}: ${packed.suspects.length} suspects, ${JSON.stringify(packed).length} characters`);
}
