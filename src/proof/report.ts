import { MODES } from './modes.ts';
import type { Failure, ModeResult, Result } from './prove.ts';

const NOTHING: ModeResult = { cases: 0, identified: 0, cured: 0, harmful: 0, failures: [] };
/** Kinds of failure that the table shows of each mode, the most frequent first. */
const KINDS_SHOWN = 8;

const percent = (part: number, whole: number): string => (whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`);

const kindOf = ({ faults, why }: Failure): string => `${faults}: ${why}`;

function failureLines(failures: readonly Failure[]): readonly string[] {
  const kinds = [...Map.groupBy(failures, kindOf)].toSorted((a, b) => b[1].length - a[1].length);
  const lines = kinds
    .slice(0, KINDS_SHOWN)
    .flatMap(([kind, [first, ...more]]) => [
      `    ${more.length + 1} × ${kind}`,
      `        bike ${first?.bike}${first?.hardship ? `, ${first.hardship}` : ''}: ${first?.ways[0]}`,
    ]);
  const left = kinds.length - KINDS_SHOWN;
  return left > 0 ? [...lines, `    and ${left} more kinds, all of them with --json`] : lines;
}

/** The result for people: one line a mode, and below it what did not go well. */
export function tableOf(result: Result): string {
  const rows = MODES.map(({ id, says, target }) => {
    const { cases, identified, cured, harmful, failures } = result[id] ?? NOTHING;
    const figures = [
      id.padEnd(9),
      String(cases).padStart(7),
      percent(identified, cases).padStart(11),
      `${100 * target} %`.padStart(7),
      percent(cured, cases).padStart(8),
      String(harmful).padStart(8),
    ];
    return [`${figures.join(' ')}  ${says}`, ...failureLines(failures)].join('\n');
  });
  return ['mode        cases  identified  target    cured  harmful', ...rows].join('\n');
}
