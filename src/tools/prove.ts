import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { PROVED_FLOWS } from '../proof/flows.ts';
import { merged, type Proof, type Result, shortfalls } from '../proof/prove.ts';
import { tableOf } from '../proof/report.ts';

/*
 * npm run prove [-- --rigs 1000 --seed 1 --faults 3 --flow no-rear-sound --modes exact,real --json]
 *
 * Random bikes with faults answer the flows until they are cured. `--faults` is how many faults are tried on each bike,
 * or `all`. A complaint that a flow takes on beside its own is tried on every fifth bike, and on all with `--flow`. The same
 * arguments give the same result, on any number of cores.
 */

const { values } = parseArgs({
  options: {
    rigs: { type: 'string', default: '1000' },
    seed: { type: 'string', default: '1' },
    faults: { type: 'string', default: '3' },
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

const startedAt = performance.now();
/** Small enough that no worker is left with much when the others are done, large enough that handing out costs nothing. */
const BIKES_A_SHARE = 10;
const BESIDE_EVERY = 5;
const shares = flows.flatMap(({ id, beside }) => {
  const every = beside && values.flow === undefined ? BESIDE_EVERY : 1;
  const bikes = Array.from({ length: Math.ceil(rigs / every) }, (_, n) => n * every);
  return Array.from({ length: Math.ceil(bikes.length / BIKES_A_SHARE) }, (_, share): Proof => {
    const own = bikes.slice(share * BIKES_A_SHARE, (share + 1) * BIKES_A_SHARE);
    return { flow: id, seed, faultsPerBike, bikes: own, ...(modes && { modes }) };
  });
});

/** Most of what a case leaves is dropped at once: room for it spares the worker from tidying up all the time. */
const YOUNG_MB = 64;
const results: Result[] = [];
let handedOut = 0;
/** A worker takes the next share when it is done with one. Results are put in the order of the shares, whoever had them. */
const work = (): Promise<void> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./prove-worker.ts', import.meta.url), {
      resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB },
    });
    let at = -1;
    const next = () => {
      at = handedOut++;
      if (at < shares.length) worker.postMessage(shares[at]);
      else resolve(worker.terminate().then(() => undefined));
    };
    worker.on('message', (result: Result) => {
      results[at] = result;
      next();
    });
    worker.once('error', reject);
    next();
  });
await Promise.all(Array.from({ length: Math.min(shares.length, availableParallelism()) }, work));
const result = merged(results);
const missed = shortfalls(result);

if (values.json) console.log(JSON.stringify({ seed, rigs, modes: result }));
else {
  console.log(tableOf(result));
  console.log(`\n${rigs} bikes, seed ${seed}, ${((performance.now() - startedAt) / 1000).toFixed(0)} s`);
  for (const line of missed) console.log(`short of its target: ${line}`);
}
if (missed.length > 0) process.exitCode = 1;
