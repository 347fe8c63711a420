import type { ComponentChildren } from 'preact';
import type { Standing } from '../../case/standing.ts';
import { assumedFor } from '../../causes/assumed.ts';
import { CAUTIONS } from '../../steps/cautions.ts';
import type { Step } from '../../steps/step.ts';
import type { Remedy, Verdict } from '../../verdicts/verdict.ts';
import { minutesInWords } from './minutes.ts';
import { ProofOfCure } from './ProofOfCure.tsx';
import { said } from './Wire.tsx';

interface Props {
  readonly verdict: Verdict;
  readonly remedy: Remedy;
  readonly standing: Standing;
  readonly root: string;
  readonly onChange: (step: Step) => void;
  /** What to do next: mark as cured, go on, send. */
  readonly children: ComponentChildren;
  /** Something drawn beside the evidence. */
  readonly picture: ComponentChildren;
  /** The way on, where the cause is looked for in another flow. */
  readonly onward?: ComponentChildren;
  /** What the check at the end is called: a fix is cured, a plan is checked. */
  readonly proofTitle: string;
}

const CERTAINTY = { proved: 'Proved', likely: 'Likely', 'short list': 'Not proved yet' } as const;

function List({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h2>{title}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}

/** A number is not parted from its unit at the end of a line, nor from the other number that belongs to it. */
const withUnit = (value: string) =>
  value.replace(/ (?=(?:[mk]?[VWΩA]|dB|Hz)(?:[ ,).]|$))/g, '\u00A0').replaceAll(' · ', '\u00A0·\u00A0');

/** A verdict: what, how sure, how known, the numbers, the fix, what not to pay for, and the check that proves it. */
export function VerdictView(props: Props) {
  const { verdict, remedy, standing, root, onChange, children, picture, onward, proofTitle } = props;
  const known = verdict.evidence.flatMap((id) => standing.terminals.filter(({ step }) => step.id === id));
  return (
    <article class="verdict">
      <h1 tabIndex={-1}>{remedy.what}</h1>
      <p>
        <b>{CERTAINTY[remedy.certainty]}.</b> {remedy.howSure}
      </p>
      {remedy.background && <p>{remedy.background}</p>}
      {onward}
      {known.length > 0 && (
        <>
          <h2>How we know</h2>
          <ul>
            {known.map((terminal) => (
              <li key={terminal.step.id}>
                <a
                  href={`#terminal-${terminal.step.id}`}
                  onClick={(event) => {
                    event.preventDefault();
                    onChange(terminal.step);
                  }}
                >
                  {terminal.step.short}
                </a>
                : {withUnit(said(terminal, true))}
              </li>
            ))}
          </ul>
        </>
      )}
      {picture}
      {remedy.numbers.length > 0 && (
        <>
          <h2>Numbers for this bike</h2>
          <table class="numbers">
            <tbody>
              {remedy.numbers.map(({ label, value }) => (
                <tr key={label}>
                  <td>{label}</td>
                  <td>{withUnit(value)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
      <h2>Do this</h2>
      {remedy.cautions.map((id) => (
        <p key={id} class="caution">
          {CAUTIONS[id]}
        </p>
      ))}
      <ol>
        {remedy.fix.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <ul class="what-it-takes">
        <li>
          <b>With:</b> {remedy.tools}.
        </li>
        <li>
          <b>Time:</b> {minutesInWords(remedy.minutes)}.
        </li>
        <li>
          <b>Who:</b> {remedy.who}
        </li>
      </ul>
      {remedy.mayAlsoBe && remedy.mayAlsoBe.length > 0 && (
        <>
          <h2>{remedy.certainty === 'short list' ? 'Which of them is it?' : 'It may also be'}</h2>
          <ol>
            {remedy.mayAlsoBe.map(({ what, split }) => (
              <li key={what}>
                <b>{what}.</b> {split}
              </li>
            ))}
          </ol>
        </>
      )}
      {(remedy.notBuy.length > 0 || remedy.ifDoneAnyway) && (
        <section class="dont-pay">
          <h2>Don’t pay for</h2>
          <ul>
            {remedy.notBuy.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          {remedy.ifDoneAnyway && <p>{remedy.ifDoneAnyway}</p>}
        </section>
      )}
      <section class="prove">
        <h2>{proofTitle}</h2>
        <ProofOfCure remedy={remedy} findings={standing.findings} />
        {children}
      </section>
      <List
        title="Assumed, because nobody knew"
        lines={assumedFor((findings) => verdict.remedy(findings), standing.findings)}
      />
      <p class="hint">
        <a href={`${root}my-bike/`}>Say what you have in “My bike”</a>, and the numbers follow.{' '}
        {CAUTIONS['local-rules']}
      </p>
      {verdict.article && (
        <p>
          <a href={`${root}read/${verdict.article}/`}>The background to this</a>
        </p>
      )}
    </article>
  );
}
