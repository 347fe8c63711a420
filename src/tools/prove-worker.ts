import { parentPort } from 'node:worker_threads';
import { type Proof, prove } from '../proof/prove.ts';

/** Proves one share of the bikes after the other, beside the other workers. */
parentPort?.on('message', (proof: Proof) => parentPort?.postMessage(prove(proof)));
