import { parentPort } from 'node:worker_threads';
import { FLOWS } from '../case/flows.ts';
import { PLAN_FLOW, provePlan } from '../proof/plan/prove-plan.ts';
import { type Proof, prove } from '../proof/prove.ts';
import { loadStages } from '../proof/stages.ts';

const stages = loadStages();
const plan = FLOWS[PLAN_FLOW].load();
parentPort?.on('message', async (proof: Proof) =>
  parentPort?.postMessage(proof.flow === PLAN_FLOW ? provePlan(await plan, proof) : prove(proof, await stages)),
);
