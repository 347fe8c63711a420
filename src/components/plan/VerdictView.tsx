import type { ComponentChildren } from 'preact';
import type { Case } from '../../case/events.ts';
import type { Standing } from '../../case/standing.ts';
import { ticksOf } from '../../case/ticks.ts';
import { assumedFor } from '../../causes/assumed.ts';
import type { PlanRemedy, PlanVerdict } from '../../plan/verdict.ts';
import { CAUTIONS } from '../../steps/cautions.ts';
import { is } from '../../steps/outcome.ts';
import { inWords, type Step } from '../../steps/step.ts';
import { Cautions } from '../caution/Cautions.tsx';
import { tellPlan } from '../fault/say-verdict.ts';
import { DontPayFor, DoThis, Numbers } from '../flow/FixParts.tsx';
import { CERTAINTY_WORDS, HowSure } from '../flow/HowSure.tsx';
import { Lines } from '../flow/Lines.tsx';
import { ProofOfCure } from '../flow/ProofOfCure.tsx';
import { SayEnd } from '../flow/SayEnd.tsx';
import { type Section, Sheet } from '../flow/Sheet.tsx';
import { said } from '../flow/said.ts';
import { factSection, fixSections } from '../flow/sheet-sections.ts';
import { useRested } from '../flow/use-rested.ts';
import { withUnit } from '../flow/with-unit.ts';
import { Counter } from './Counter.tsx';
import { conditionsIn } from './conditions.ts';
import { KeepReadings } from './KeepReadings.tsx';
import { Unless, WhatFollows } from './Open.tsx';

interface Props {
  readonly verdict: PlanVerdict;
  readonly remedy: PlanRemedy;
  readonly standing: Standing;
  readonly case: Case;
  readonly root: string;
  readonly onReopen: (step: Step) => void;
  readonly onMove: (next: Case) => void;
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

/** What a sheet says where no counter needs the room. */
const inFull = (remedy: PlanRemedy, standing: Standing, assumed: readonly string[]): readonly Section[] => [
  { title: 'What else it may be', lines: remedy.mayAlsoBe?.map(({ what, split }) => `${what}. ${split}`) ?? [] },
  { title: 'Numbers for this bike', lines: remedy.numbers.map(({ label, value }) => `${label}: ${value}`) },
  { title: 'Check it', lines: [remedy.proof] },
  factSection(standing),
  { title: 'Assumed', lines: assumed },
];

/** What stands under an answer: why it is so, and what is taken along. */
function Background({ verdict, remedy, standing, root, onReopen }: Omit<Props, 'case' | 'onMove' | 'picture'>) {
  const assumed = assumedFor((findings) => verdict.remedy(findings), standing.findings);
  return (
    <>
      {remedy.sheet && <Counter sheet={remedy.sheet} />}
      <Evidence verdict={verdict} standing={standing} onReopen={onReopen} />
      {remedy.background && <p>{remedy.background}</p>}
      <Lines title="Assumed, because nobody knew" lines={assumed} />
      <p class="hint">
        <a href={`${root}my-bike/`}>Say what you have in “My bike”</a>, and the numbers follow.{' '}
        {CAUTIONS['local-rules']}
      </p>
      <p>
        <a href={`${root}read/${verdict.article}/`}>The background to this</a>
      </p>
      <Sheet
        title={verdict.title}
        sections={[
          {
            title: 'Answer',
            lines: [remedy.what, `${CERTAINTY_WORDS[remedy.certainty]}. ${remedy.howSure}`, ...conditionsIn(remedy)],
          },
          ...(remedy.sheet ? remedy.sheet.parts : []),
          ...fixSections({ ...remedy, cautions: [...remedy.cautions, ...remedy.proofCautions], parts: [] }),
          ...(remedy.sheet ? [] : inFull(remedy, standing, assumed)),
        ]}
      />
    </>
  );
}

/** The answer of a plan, or what a profile reads: what, how sure, what to do and not to pay for, and only then why. */
export function VerdictView({ verdict, remedy, standing, case: it, root, onReopen, onMove, picture }: Props) {
  const ticks = ticksOf(it, verdict.id, onMove);
  const open = standing.terminals.find(({ step }) => step.id === remedy.reopens);
  const rested = useRested();
  return (
    <article class="verdict" aria-busy={rested ? undefined : true}>
      <h1 tabIndex={-1}>{remedy.what}</h1>
      <SayEnd {...tellPlan(remedy, conditionsIn(remedy))} />
      <HowSure certainty={remedy.certainty} because={remedy.howSure} />
      <Unless unless={remedy.unless} />
      <WhatFollows findings={remedy.findings} holds={remedy.holds} />
      {open && (
        <button type="button" class="plain" onClick={() => onReopen(open.step)}>
          I know it now, or can read it
        </button>
      )}
      <div class="side-by-side">
        <div>
          <DoThis {...remedy} ticks={ticks} />
          <DontPayFor notBuy={remedy.notBuy} ifDoneAnyway={remedy.ifDoneAnyway} />
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
        </div>
        <div>
          <Numbers numbers={remedy.numbers} />
          {rested && picture}
          <KeepReadings facts={standing.facts} saved={standing.rig.profileRead} />
          <section class="prove">
            <h2>Check it</h2>
            <Cautions ids={remedy.proofCautions} />
            <ProofOfCure proof={remedy.proof} hasMeter={is(standing.findings, 'tools-at-hand', 'meter')} />
          </section>
        </div>
      </div>
      {rested && <Background {...{ verdict, remedy, standing, root, onReopen }} />}
    </article>
  );
}
