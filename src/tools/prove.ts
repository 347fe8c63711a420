import { parseArgs } from 'node:util';
import { PROVED_FLOWS } from '../case/flows.ts';
import { calibrationTable } from '../proof/calibration.ts';
import { PLAN_FLOW } from '../proof/plan/prove-plan.ts';
import { merged, type Proof, type Result } from '../proof/prove.ts';
import { planTableOf, tableOf } from '../proof/report.ts';
import { sharedOut } from './shared-out.ts';

/*
 * npm run prove [-- --rigs 1000 --seed 1 --faults 1 --turns 2 --flow no-rear-sound --modes exact,real --json]
 *
 * Random bikes with faults answer the shipped flows until they are cured; the faults are drawn by how often callers have
 * them. `--faults` is how many are drawn for each bike. Modes that try each step of a case in turn take `--turns` of them,
 * or `all`. The same arguments give the same result, on any number of cores.
 *
 * The plan is played besides: owners of random bikes, with whatever is stored in them, ask whether it needs a reflash.
 *
 * npm run prove -- --calibration --modes exact,real
 *
 * What the shares at verdicts are worth besides: of those that were said to be nine in ten, how many were right.
 */

const { values } = parseArgs({
  options: {
    rigs: { type: 'string', default: '1000' },
    seed: { type: 'string', default: '1' },
    faults: { type: 'string', default: '2' },
    turns: { type: 'string', default: '2' },
    flow: { type: 'string' },
    modes: { type: 'string' },
    json: { type: 'boolean', default: false },
    short: { type: 'boolean', default: false },
    calibration: { type: 'boolean', default: false },
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
const faultsPerBike = whole('faults', values.faults);
const turns = values.turns === 'all' ? Infinity : whole('turns', values.turns);
const modes = values.modes?.split(',');
/** Every flow that is proved with its complaints, and the plan, which has none. */
const ALL: readonly (readonly [string, { readonly complaints: Proof['complaints'] }])[] = [
  ...PROVED_FLOWS,
  [PLAN_FLOW, { complaints: {} }],
];
const flows = ALL.filter(([id]) => values.flow === undefined || id === values.flow);
if (flows.length === 0) throw new RangeError(`--flow must be one of ${ALL.map(([id]) => id).join(', ')}`);

/** Small enough that no worker is left with much when the others are done, large enough that handing out costs nothing. */
const BIKES_A_SHARE = 10;
const shares = flows.flatMap(([flow, { complaints }]) =>
  Array.from({ length: Math.ceil(rigs / BIKES_A_SHARE) }, (_, share): Proof => {
    const first = share * BIKES_A_SHARE;
    const bikes = Array.from({ length: Math.min(BIKES_A_SHARE, rigs - first) }, (__, n) => first + n);
    return { flow, complaints, seed, faultsPerBike, turns, bikes, ...(modes && { modes }) };
  }),
);

const startedAt = performance.now();
const results = await sharedOut<Proof, Result>(new URL('./prove-worker.ts', import.meta.url), shares);
const byFlow = flows.map(([flow]) => [flow, merged(results.filter((_, i) => shares[i]?.flow === flow))] as const);

if (values.json)
  console.log(
    JSON.stringify({ flows: Object.fromEntries(byFlow.map(([flow, modesOf]) => [flow, { modes: modesOf }])) }),
  );
else {
  for (const [flow, result] of byFlow) {
    console.log(
      `${flow}\n${flow === PLAN_FLOW ? planTableOf(result, !values.short) : tableOf(result, !values.short)}\n`,
    );
    if (values.calibration && flow !== PLAN_FLOW)
      for (const [mode, { bins }] of Object.entries(result)) console.log(`${mode}\n${calibrationTable(bins)}\n`);
  }
  console.log(`${rigs} bikes, seed ${seed}, ${((performance.now() - startedAt) / 1000).toFixed(0)} s`);
}
