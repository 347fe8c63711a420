import type { Ticks } from '../../case/ticks.ts';
import type { CautionId } from '../../steps/cautions.ts';
import { Cautions } from '../caution/Cautions.tsx';
import { minutesInWords } from './minutes.ts';
import { withUnit } from './with-unit.ts';

/* The parts that every verdict has, whatever it was worked out by. */

interface DoThisProps {
  readonly fix: readonly string[];
  readonly cautions: readonly CautionId[];
  readonly tools: string;
  readonly minutes: number;
  readonly who: string;
  readonly ticks: Ticks;
}

/** The fix in order, each line to be ticked, what it takes, and what to be careful of before the first hand is laid on. */
export function DoThis({ fix, cautions, tools, minutes, who, ticks }: DoThisProps) {
  return (
    <>
      <h2>Do this</h2>
      <Cautions ids={cautions} />
      <ol class="ticks">
        {fix.map((line) => (
          <li key={line}>
            <label>
              <input type="checkbox" checked={ticks.has(line)} onChange={() => ticks.toggle(line)} />
              <span>{withUnit(line)}</span>
            </label>
          </li>
        ))}
      </ol>
      <ul class="what-it-takes">
        <li>
          <b>With:</b> {tools}.
        </li>
        <li>
          <b>Time:</b> {minutesInWords(minutes)}.
        </li>
        <li>
          <b>Who:</b> {who}
        </li>
      </ul>
    </>
  );
}

interface Labelled {
  readonly label: string;
  readonly value: string;
}

export function Numbers({ numbers }: { readonly numbers: readonly Labelled[] }) {
  if (numbers.length === 0) return null;
  return (
    <>
      <h2>Numbers for this bike</h2>
      <table class="numbers">
        <tbody>
          {numbers.map(({ label, value }) => (
            <tr key={label}>
              <td>{label}</td>
              <td>{withUnit(value)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

interface DontPayProps {
  readonly notBuy: readonly string[];
  readonly ifDoneAnyway: string | undefined;
}

export function DontPayFor({ notBuy, ifDoneAnyway }: DontPayProps) {
  if (notBuy.length === 0 && !ifDoneAnyway) return null;
  return (
    <section class="dont-pay">
      <h2>Don’t pay for</h2>
      <ul>
        {notBuy.map((line) => (
          <li key={line}>{withUnit(line)}</li>
        ))}
      </ul>
      {ifDoneAnyway && <p>{ifDoneAnyway}</p>}
    </section>
  );
}
