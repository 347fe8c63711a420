import { MODES } from './modes.ts';
import { PLAN_MODES } from './plan/prove-plan.ts';
import { type Failure, type ModeResult, NOTHING, type Result } from './prove.ts';

/** Kinds of failure that the table shows of each mode, the most frequent first. */
const KINDS_SHOWN = 6;

const percent = (part: number, whole: number): string => (whole === 0 ? '–' : ((100 * part) / whole).toFixed(1));
const per = (part: number, whole: number, of: number): string => (whole === 0 ? '–' : ((of * part) / whole).toFixed(1));

function failureLines(failures: readonly Failure[]): readonly string[] {
  const kinds = [...Map.groupBy(failures, ({ faults, why }) => `${faults}: ${why}`)].toSorted(
    (a, b) => b[1].length - a[1].length,
  );
  return kinds
    .slice(0, KINDS_SHOWN)
    .flatMap(([kind, [first, ...more]]) => [
      `    ${more.length + 1} × ${kind}`,
      `        bike ${first?.bike}${first?.hardship ? `, ${first.hardship}` : ''}: ${first?.ways[0]}`,
    ]);
}

/** The class of what was made hard that went worst, of those with enough cases to say so. */
function worstClass(classes: ModeResult['classes']): string {
  const enough = Object.entries(classes).filter(([, [cases]]) => cases >= 20);
  const [worst] = enough.toSorted(([, a], [, b]) => a[1] / a[0] - b[1] / b[0]);
  return worst ? ` worst class: ${worst[0]} ${percent(worst[1][1], worst[1][0])} of ${worst[1][0]}` : '';
}

/** The figures of a mode in one line, and below it what did not go well. */
const rowOf = (figures: readonly string[], says: string, mode: ModeResult, failures: boolean): string =>
  [`${figures.join(' ')}  ${says}${worstClass(mode.classes)}`, ...(failures ? failureLines(mode.failures) : [])].join(
    '\n',
  );

/** The result for people: one line a mode, and below it what did not go well. */
export function tableOf(result: Result, failures = true): string {
  const rows = MODES.flatMap(({ id, says }) => {
    const mode = result[id] ?? NOTHING;
    if (mode.cases === 0) return [];
    const { cases } = mode;
    const figures = [
      id.padEnd(12),
      String(cases).padStart(6),
      percent(mode.first, cases).padStart(6),
      percent(mode.listed, cases).padStart(7),
      percent(mode.proved, cases).padStart(7),
      percent(mode.provedRight, mode.proved).padStart(6),
      percent(mode.cured, cases).padStart(6),
      per(mode.vain, cases, 100).padStart(9),
      per(mode.parts, cases, 1000).padStart(11),
      String(mode.harmful).padStart(5),
      per(mode.minutes, cases, 1).padStart(6),
      per(mode.questions, cases, 1).padStart(6),
    ];
    return [rowOf(figures, says, mode, failures)];
  });
  const head = 'mode          cases  first  listed  proved  right  cured  vain/100  parts/1000  harm    min  asked';
  return [head, ...rows].join('\n');
}

/** The plan for people: what its answers were worth, and below it what did not go well. */
export function planTableOf(result: Result, failures = true): string {
  const rows = PLAN_MODES.flatMap(({ id, says }) => {
    const mode = result[id];
    if (!mode?.plan) return [];
    const { cases, plan } = mode;
    const figures = [
      id.padEnd(10),
      String(cases).padStart(6),
      percent(plan.right, plan.answered).padStart(7),
      percent(plan.unknown, cases).padStart(8),
      percent(plan.likelyNothingRight, plan.likelyNothing).padStart(14),
      per(plan.needless, cases, 1000).padStart(14),
      per(plan.missed, cases, 1000).padStart(12),
      per(plan.wrong, cases, 1000).padStart(11),
      String(plan.wrongWithoutUnless).padStart(17),
      percent(mode.provedRight, mode.proved).padStart(7),
      String(mode.harmful).padStart(5),
      per(mode.minutes, cases, 1).padStart(6),
      per(mode.questions, cases, 1).padStart(6),
    ];
    return [rowOf(figures, says, mode, failures)];
  });
  const head =
    'mode        cases  right%  unknown%  likely, right%  needless/1000  missed/1000  wrong/1000  without “unless”  proved  harm    min  asked';
  return [head, ...rows].join('\n');
}
