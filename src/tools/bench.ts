import { parseArgs } from 'node:util';
import { bench } from '../proof/bench.ts';

/*
 * npm run bench [-- --json]
 *
 * Expected minutes of each flow on some twenty fixed bikes, against the least that any order of its steps could take.
 */

const { values } = parseArgs({ options: { json: { type: 'boolean', default: false } } });

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));
const flows = Object.entries(bench());

if (values.json) {
  const shown = flows.map(([id, { minutes, least, ratio, exact }]) => [
    id,
    { minutes: rounded(minutes, 2), least: rounded(least, 2), ratio: rounded(ratio, 3), exact },
  ]);
  console.log(JSON.stringify({ flows: Object.fromEntries(shown) }));
} else {
  for (const [id, { minutes, least, ratio, exact, steps }] of flows) {
    const bound = exact ? 'the least possible' : 'a bound that no order is below';
    console.log(`${id}: ${minutes.toFixed(1)} min, ${least.toFixed(1)} min is ${bound}, ratio ${ratio.toFixed(2)}`);
    for (const { step, minutes: own, least: best } of steps)
      console.log(`    ${step.padEnd(20)} ${own.toFixed(2).padStart(6)} ${best.toFixed(2).padStart(6)}`);
  }
}
