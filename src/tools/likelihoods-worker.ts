import { parentPort } from 'node:worker_threads';
import { FLOWS, type FlowId, isProved } from '../case/flows.ts';
import { CAUSES } from '../causes/all.ts';
import { lookOver } from '../survey/survey.ts';
import { surveyOf } from '../survey/survey-of.ts';

interface Share {
  readonly flow: FlowId;
  readonly first: number;
  readonly count: number;
}

parentPort?.on('message', async ({ flow, first, count }: Share) => {
  const listed = FLOWS[flow];
  if (!isProved(listed)) throw new RangeError(`flow must start from a complaint, got ${flow}`);
  const what = surveyOf(listed, await listed.load(), CAUSES);
  parentPort?.postMessage(lookOver({ ...what, rigs: what.rigs.slice(first, first + count) }, first));
});
