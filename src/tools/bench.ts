import { parseArgs } from 'node:util';
import { minutesOf } from '../diagnosis/cost.ts';
import { bench } from '../proof/bench.ts';
import { flowCost, type Way } from '../proof/flow-cost.ts';
import { provedFlow } from '../proof/flows.ts';
import { BUILD_KINDS, fixedRigs } from '../survey/fixed-rigs.ts';

/*
 * npm run bench [-- --json]
 *
 * Expected minutes of each flow on some twenty fixed bikes, against the least that any order of its steps could take.
 *
 * npm run bench -- --flow amp-wont-turn-on --bike "amp by wire" [--nth 3]
 *
 * How one flow finds each cause on one of them, and how the best order does.
 */

const { values } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    flow: { type: 'string' },
    bike: { type: 'string', default: BUILD_KINDS[0] },
    nth: { type: 'string', default: '0' },
  },
});

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

function printAll(): void {
  const flows = Object.entries(bench());
  if (values.json) {
    const shown = flows.map(([id, { minutes, least, ratio, exact }]) => [
      id,
      { minutes: rounded(minutes, 2), least: rounded(least, 2), ratio: rounded(ratio, 3), exact },
    ]);
    console.log(JSON.stringify({ flows: Object.fromEntries(shown) }));
    return;
  }
  for (const [id, { minutes, least, ratio, exact, steps }] of flows) {
    const bound = exact ? 'the least possible' : 'a bound that no order is below';
    console.log(`${id}: ${minutes.toFixed(1)} min, ${least.toFixed(1)} min is ${bound}, ratio ${ratio.toFixed(2)}`);
    for (const { step, minutes: own, least: best } of steps)
      console.log(`    ${step.padEnd(20)} ${own.toFixed(2).padStart(6)} ${best.toFixed(2).padStart(6)}`);
  }
}

/** What is known of the bike is not asked, and what all causes are asked alike tells nothing here. */
const wayOf = (told: Way['flow']): string => {
  const asked = told.filter(({ step }) => step.kind !== 'rig');
  const minutes = minutesOf(asked.map(({ step }) => step));
  return `${minutes.toFixed(1).padStart(5)} min  ${asked.map(({ step, outcome }) => `${step.id}=${outcome}`).join(' ')}`;
};

function printWays(flow: string): void {
  const kind = BUILD_KINDS.find((one) => one === values.bike);
  if (!kind) throw new RangeError(`bike must be one of ${BUILD_KINDS.join(', ')}, got ${values.bike}`);
  const rig = fixedRigs(kind, Number(values.nth) + 1).at(-1);
  const cost = rig && flowCost(provedFlow(flow), rig);
  if (!cost) throw new RangeError(`flow must be a complaint that this bike can have, got ${flow}`);
  for (const { cause, shareRatio, verdict, flow: ours, best } of cost.ways) {
    console.log(`${cause}, ${(100 * shareRatio).toFixed(1)} % → ${verdict}`);
    console.log(`    flow ${wayOf(ours)}`);
    console.log(`    best ${wayOf(best)}`);
  }
  console.log(
    `${cost.minutes.toFixed(1)} min, least ${cost.least.toFixed(1)} min, ${cost.exact ? 'exact' : 'a bound'}`,
  );
}

if (values.flow) printWays(values.flow);
else printAll();
