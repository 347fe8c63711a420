import { parentPort } from 'node:worker_threads';
import { type Proof, prove } from '../proof/prove.ts';
import { loadStages } from '../proof/stages.ts';

const stages = loadStages();
parentPort?.on('message', async (proof: Proof) => parentPort?.postMessage(prove(proof, await stages)));
