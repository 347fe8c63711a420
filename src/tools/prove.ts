import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { PROVED_FLOWS } from '../proof/flows.ts';
import { merged, type Proof, type Result, shortfalls } from '../proof/prove.ts';
import { tableOf } from '../proof/report.ts';

/*
 * npm run prove [-- --rigs 1000 --seed 1 --faults 2 --flow no-rear-sound --modes exact,real --json]
 *
 * Random bikes with faults answer the flows until they are cured. `--faults` is how many faults are tried on each bike,
 * or `all`. The same arguments give the same result, on any number of cores.
 */

const { values } = parseArgs({
  options: {
    rigs: { type: 'string', default: '1000' },
    seed: { type: 'string', default: '1' },
    faults: { type: 'string', default: '2' },
    flow: { type: 'string' },
    modes: { type: 'string' },
    json: { type: 'boolean', default: false },
  },
});

const whole = (name: string, text: string): number => {
  const number = Number(text);
  if (!Number.isInteger(number) || number < 1)
    throw new RangeError(`--${name} must be a whole number above 0, got ${text}`);
  return number;
};
const rigs = whole('rigs', values.rigs);
const seed = whole('seed', values.seed);
const faultsPerBike = values.faults === 'all' ? Infinity : whole('faults', values.faults);
const modes = values.modes?.split(',');
const flows = PROVED_FLOWS.filter(({ id }) => values.flow === undefined || id === values.flow);
if (flows.length === 0) throw new RangeError(`--flow must be one of ${PROVED_FLOWS.map(({ id }) => id).join(', ')}`);

const inWorker = (proof: Proof): Promise<Result> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./prove-worker.ts', import.meta.url), { workerData: proof });
    worker.once('message', resolve);
    worker.once('error', reject);
  });

const startedAt = performance.now();
const workers = Math.min(rigs, availableParallelism());
const shares = flows.flatMap(({ id }) =>
  Array.from({ length: workers }, (_, i): Proof => {
    const first = Math.floor((i * rigs) / workers);
    const bikes = Array.from({ length: Math.floor(((i + 1) * rigs) / workers) - first }, (__, n) => first + n);
    return { flow: id, seed, faultsPerBike, bikes, ...(modes && { modes }) };
  }),
);
const results: Result[] = [];
for (let at = 0; at < shares.length; at += workers)
  results.push(...(await Promise.all(shares.slice(at, at + workers).map(inWorker))));
const result = merged(results);
const missed = shortfalls(result);

if (values.json) console.log(JSON.stringify({ seed, rigs, modes: result }));
else {
  console.log(tableOf(result));
  console.log(`\n${rigs} bikes, seed ${seed}, ${((performance.now() - startedAt) / 1000).toFixed(0)} s`);
  for (const line of missed) console.log(`short of its target: ${line}`);
}
if (missed.length > 0) process.exitCode = 1;
