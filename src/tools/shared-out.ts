import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';

/** Most of what a share leaves is dropped at once: room for it spares a worker from tidying up all the time. */
const YOUNG_MB = 64;

/** Each core takes the next share when it is done with one. Results are in the order of the shares, whoever had them. */
export async function sharedOut<Share, Result>(module: URL, shares: readonly Share[]): Promise<readonly Result[]> {
  const results: Result[] = [];
  let handedOut = 0;
  const work = () =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(module, { resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB } });
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
  return results;
}
