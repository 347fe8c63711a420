import type { ComponentChildren } from 'preact';
import type { Standing } from '../../case/standing.ts';
import { assumedFor } from '../../causes/assumed.ts';
import type { PlanRemedy, PlanVerdict } from '../../plan/verdict.ts';
import { CAUTIONS } from '../../steps/cautions.ts';
import { is } from '../../steps/outcome.ts';
import { inWords, type Step } from '../../steps/step.ts';
import { DontPayFor, DoThis, Numbers } from '../flow/FixParts.tsx';
import { HowSure } from '../flow/HowSure.tsx';
import { Lines } from '../flow/Lines.tsx';
import { ProofOfCure } from '../flow/ProofOfCure.tsx';
import { said, withUnit } from '../flow/said.ts';

interface Props {
  readonly verdict: PlanVerdict;
  readonly remedy: PlanRemedy;
  readonly standing: Standing;
  readonly root: string;
  readonly onReopen: (step: Step) => void;
  /** Something drawn beside the evidence. */
  readonly picture: ComponentChildren;
}

function Evidence({ verdict, standing, onReopen }: Pick<Props, 'verdict' | 'standing' | 'onReopen'>) {
  const known = verdict.evidence.flatMap((id) => standing.terminals.filter(({ step }) => step.id === id));
  if (known.length === 0) return null;
  return (
    <>
      <h2>How we know</h2>
      <ul class="evidence">
        {known.map((terminal) => (
          <li key={terminal.step.id}>
            <a
              href={`#terminal-${terminal.step.id}`}
              onClick={(event) => {
                event.preventDefault();
                onReopen(terminal.step);
              }}
            >
              {inWords(terminal.step.short, standing)}
            </a>
            : {withUnit(said(terminal, true))}
          </li>
        ))}
      </ul>
    </>
  );
}

/** The answer of a plan, or what a profile reads: what, how sure, what to do, and only then why. */
export function VerdictView({ verdict, remedy, standing, root, onReopen, picture }: Props) {
  return (
    <article class="verdict">
      <h1 tabIndex={-1}>{remedy.what}</h1>
      <HowSure certainty={remedy.certainty} because={remedy.howSure} />
      <DoThis {...remedy} />
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
      <Numbers numbers={remedy.numbers} />
      {picture}
      <DontPayFor notBuy={remedy.notBuy} ifDoneAnyway={remedy.ifDoneAnyway} />
      <section class="prove">
        <h2>Check it</h2>
        <ProofOfCure proof={remedy.proof} hasMeter={is(standing.findings, 'tools-at-hand', 'meter')} />
      </section>
      <Evidence verdict={verdict} standing={standing} onReopen={onReopen} />
      {remedy.background && <p>{remedy.background}</p>}
      <Lines
        title="Assumed, because nobody knew"
        lines={assumedFor((findings) => verdict.remedy(findings), standing.findings)}
      />
      <p class="hint">
        <a href={`${root}my-bike/`}>Say what you have in “My bike”</a>, and the numbers follow.{' '}
        {CAUTIONS['local-rules']}
      </p>
      <p>
        <a href={`${root}read/${verdict.article}/`}>The background to this</a>
      </p>
    </article>
  );
}
