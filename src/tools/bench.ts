import { parseArgs } from 'node:util';
import { FLOW_LIST, FLOWS, isFlowId } from '../case/flows.ts';
import { type Benched, bench, benchFlow, benchJson, type PageFigures } from '../proof/bench.ts';
import { flowCost, type Way } from '../proof/flow-cost.ts';
import { BUILD_KINDS, fixedRigs } from '../survey/fixed-rigs.ts';
import type { ComplaintId } from '../world/symptoms/index.ts';
import { builtFiles, pagesOf, textOf } from './built-site.ts';
import { flowBytes } from './flow-pages.ts';
import { pageSpeeds } from './page-speed.ts';
import { type SearchSpeed, searchSpeed } from './search-speed.ts';
import { siteBase, siteFolder } from './site.ts';

/*
 * npm run bench [-- --json]
 *
 * Expected minutes of each flow on some twenty fixed bikes, against the least that any order of its steps could take; and
 * of the built site, what the page of each flow weighs and how fast it is in Chromium.
 *
 * npm run bench -- --pages [--json]
 *
 * Only the pages. With --search instead, only what a key costs in the search.
 *
 * npm run bench -- --flow amp-wont-turn-on --bike "amp by wire" [--nth 3]
 *
 * How one flow finds each cause on one of them, and how the best order does.
 */

const { values } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    pages: { type: 'boolean', default: false },
    search: { type: 'boolean', default: false },
    flow: { type: 'string' },
    bike: { type: 'string', default: BUILD_KINDS[0] },
    nth: { type: 'string', default: '0' },
  },
});

function printTable(flows: Readonly<Record<string, Benched>>): void {
  for (const [id, { minutes, least, ratio, exact, steps }] of Object.entries(flows)) {
    const bound = exact ? 'the least possible' : 'a bound that no order is below';
    console.log(`${id}: ${minutes.toFixed(1)} min, ${least.toFixed(1)} min is ${bound}, ratio ${ratio.toFixed(2)}`);
    for (const { step, minutes: own, least: best } of steps)
      console.log(`    ${step.padEnd(24)} ${own.toFixed(2).padStart(6)} ${best.toFixed(2).padStart(6)}`);
  }
}

const inWords = (told: Way['best']): string => told.map(({ step, outcome }) => `${step.id}=${outcome}`).join(' ');

async function printWays(id: string): Promise<void> {
  const kind = BUILD_KINDS.find((one) => one === values.bike);
  if (!kind) throw new RangeError(`bike must be one of ${BUILD_KINDS.join(', ')}, got ${values.bike}`);
  const listed = isFlowId(id) ? FLOWS[id] : undefined;
  if (listed?.kind !== 'fault') throw new RangeError(`flow must start from a complaint, got ${id}`);
  const rig = fixedRigs(kind, Number(values.nth) + 1).at(-1);
  const flow = await benchFlow(listed);
  for (const complaint of Object.keys(listed.complaints) as ComplaintId[]) {
    const cost = rig && flowCost(flow, complaint, rig);
    if (!cost) continue;
    const bound = cost.exact ? 'exact' : 'a bound';
    console.log(`${complaint}: ${cost.minutes.toFixed(1)} min, least ${cost.least.toFixed(1)} min, ${bound}`);
    for (const { fault, shareRatio, ends, flow: ours, best } of cost.ways) {
      const minutes = ours.reduce((sum, one) => sum + one.minutes, 0);
      console.log(`${fault}, ${(100 * shareRatio).toFixed(1)} % → ${ends}, ${minutes.toFixed(1)} min`);
      console.log(`    flow ${inWords(ours)}`);
      console.log(`    best ${inWords(best)}`);
    }
  }
}

/** What each flow's page weighs and how fast it is, where the site was built. */
async function pagesByFlow(): Promise<Readonly<Record<string, PageFigures>>> {
  const files = await builtFiles(siteFolder());
  const weighed = flowBytes(pagesOf(files), siteBase(), textOf(files));
  const speeds = await pageSpeeds(
    siteFolder(),
    siteBase(),
    weighed.map(({ page }) => page),
  );
  return Object.fromEntries(
    weighed.flatMap(({ page, ...bytes }) =>
      FLOW_LIST.filter(([, { path }]) => path === page).map(([id]) => [id, { ...bytes, ...speeds[page] }] as const),
    ),
  );
}

function printPages(pages: Readonly<Record<string, PageFigures>>): void {
  if (Object.keys(pages).length > 0)
    console.log('\nPages: bytes of script; milliseconds at a quarter of the speed, and on a slow line');
  for (const [id, { bytesFirst, bytesAll, answerMs, slowLineMs }] of Object.entries(pages)) {
    console.log(`${id}: ${bytesFirst} bytes until the second question, ${bytesAll} in all`);
    if (answerMs)
      console.log(`    next question ${answerMs.median.toFixed(0)} ms, 95 % within ${answerMs.p95.toFixed(0)}`);
    if (slowLineMs)
      console.log(
        `    slow line: painted ${slowLineMs.firstPaint.toFixed(0)}, tap taken ${slowLineMs.firstTap.toFixed(0)}, second question ${slowLineMs.secondQuestion.toFixed(0)}`,
      );
  }
}

function printSearch({ written, drawn, fieldAlone }: SearchSpeed): void {
  const told = ({ median, p95 }: SearchSpeed['drawn']) => `${median.toFixed(1)} ms, 95 % within ${p95.toFixed(1)}`;
  console.log('\nSearch: milliseconds of a key at a quarter of the speed');
  console.log(`    list written ${told(written)}`);
  console.log(`    list drawn ${told(drawn)}; the field by itself ${told(fieldAlone)}`);
}

if (values.flow) await printWays(values.flow);
else {
  const flows = values.pages || values.search ? {} : await bench();
  const pages = values.search ? {} : await pagesByFlow();
  const search = await searchSpeed(siteFolder(), siteBase());
  if (values.json) console.log(benchJson(flows, pages, search));
  else {
    printTable(flows);
    printPages(pages);
    printSearch(search);
  }
}
