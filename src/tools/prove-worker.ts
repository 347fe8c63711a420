import { parentPort, workerData } from 'node:worker_threads';
import { type Proof, prove } from '../proof/prove.ts';

/** Proves its share of the bikes beside the others. */
parentPort?.postMessage(prove(workerData as Proof));
