import type { ComponentChildren } from 'preact';
import type { Case } from '../../case/events.ts';
import { ticksOf } from '../../case/ticks.ts';
import { cautionsOfCheck, cautionsOfFix, cautionsOfProof } from '../../causes/action-cautions.ts';
import { assumedFor } from '../../causes/assumed.ts';
import { type Cause, type Remedy, remedyOf } from '../../causes/cause.ts';
import { figureText } from '../../causes/figure.ts';
import { effortOf } from '../../causes/repair-action.ts';
import { upperFirst } from '../../compute/first-letter.ts';
import type { Certainty } from '../../inference/certainty.ts';
import { CAUTIONS, type CautionId } from '../../steps/cautions.ts';
import type { Step } from '../../steps/step.ts';
import { Cautions } from '../caution/Cautions.tsx';
import { DontPayFor, DoThis, Numbers } from '../flow/FixParts.tsx';
import { HowSure } from '../flow/HowSure.tsx';
import { Lines } from '../flow/Lines.tsx';
import { ProofOfCure } from '../flow/ProofOfCure.tsx';
import { SayEnd } from '../flow/SayEnd.tsx';
import { Sheet } from '../flow/Sheet.tsx';
import { Terms } from '../flow/Terms.tsx';
import { useRested } from '../flow/use-rested.ts';
import { causeSections } from './cause-sections.ts';
import { Evidence } from './Evidence.tsx';
import { tellCause } from './say-verdict.ts';
import { shareInWords } from './shares.ts';
import type { Check, FaultView } from './view.ts';

/** Whether a fix costs more than hands and a few minutes: then it is made sure of first. */
export const isDear = ({ repair, alreadyDone }: Remedy): boolean => !alreadyDone && effortOf(repair) !== 'hands';

/** What a proof stands on: all its answers alike, or some that were given twice. */
function standsOn(view: FaultView, cause: Cause): string {
  const pivotal = view.hangsOn(cause.id);
  if (pivotal.length === 0) return ' It would still lead without any one of the readings below.';
  if (pivotal.some(({ confirmed }) => !confirmed)) return '';
  return pivotal.length === 1
    ? ' The one answer that it hangs on was given twice.'
    : ' The answers that it hangs on were given twice.';
}

/** What the word for how sure it is rests on. It says no more than was reckoned. */
function because(view: FaultView, cause: Cause, certainty: Certainty, dear: boolean, isDone: boolean): string {
  if (certainty === 'proved')
    return `Something that was seen points at this and at no other cause, and all else that was seen fits it.${standsOn(view, cause)}`;
  const odds = `${upperFirst(shareInWords(view.shareOf(cause.id)))}.`;
  if (!dear) return odds;
  return isDone
    ? `${odds} Look once more at what the check below showed before you buy or book anything.`
    : `${odds} Make sure with the check below before you buy or book anything.`;
}

function Alternatives({ view, besides }: { readonly view: FaultView; readonly besides: readonly string[] }) {
  const others = view.shares.filter((one) => besides.includes(one.cause) && !view.ruledOut.has(one.cause));
  if (others.length === 0) return null;
  return (
    <>
      <h2>It may also be</h2>
      <ul>
        {others.map((other) => (
          <li key={other.cause}>
            <b>{view.nameOf(other.cause)}</b>, {shareInWords(other.shareRatio)}. {view.checkOf(other.cause)}
          </li>
        ))}
      </ul>
    </>
  );
}

const checkTitle = (isFirst: boolean, isDone: boolean): string => {
  if (!isFirst) return 'The check that tells';
  return isDone ? 'Look at this once more first' : 'Check this first';
};

interface Props {
  readonly view: FaultView;
  readonly case: Case;
  readonly cause: Cause;
  readonly certainty: Certainty;
  /** What else it may be. */
  readonly besides: readonly string[];
  readonly root: string;
  readonly onReopen: (step: Step) => void;
  readonly onMove: (next: Case) => void;
  /** What can be said of the fix: it is cured, it is not. */
  readonly children: ComponentChildren;
}

type Ids = readonly CautionId[];

/** Lists of cautions without what an earlier one has, in the order that they are read in. */
function inTurn<const L extends readonly Ids[]>(lists: L, order: readonly number[]): { [K in keyof L]: Ids } {
  const earlier = (at: number) => order.slice(0, order.indexOf(at)).flatMap((i) => lists[i] ?? []);
  return lists.map((ids, at) => ids.filter((id) => !earlier(at).includes(id))) as { [K in keyof L]: Ids };
}

interface BackgroundProps extends Pick<Props, 'view' | 'cause' | 'certainty' | 'besides' | 'root' | 'onReopen'> {
  readonly remedy: Remedy;
  readonly howSure: string;
  readonly split: Check | undefined;
  readonly cautions: Ids;
}

/** What stands under a verdict: why it is so, what else it may be, and what is taken along. */
function Background(props: BackgroundProps) {
  const { view, cause, certainty, besides, root, onReopen, remedy, howSure, split, cautions } = props;
  const assumed = assumedFor((f) => cause.remedy(f), view.standing.findings);
  return (
    <>
      <Evidence view={view} cause={cause.id} onReopen={onReopen} />
      {remedy.background && (
        <p>
          <Terms text={remedy.background} root={root} />
        </p>
      )}
      <Alternatives view={view} besides={besides} />
      <Lines title="Assumed, because nobody knew" lines={assumed} />
      <p class="hint">
        <a href={`${root}my-bike/`}>Say what you have in “My bike”</a>, and the numbers follow.{' '}
        {CAUTIONS['local-rules']}
      </p>
      {cause.article && (
        <p>
          <a href={`${root}read/${cause.article}/`}>The background to this</a>
        </p>
      )}
      <Sheet
        title={`${view.flow.title}: ${view.nameOf(cause.id)}`}
        sections={causeSections(view, remedy, {
          certainty,
          howSure,
          split,
          cautions,
          assumed,
        })}
      />
    </>
  );
}

/** A cause as a verdict: what is wrong, how sure that is, what to do and what not to pay for, and only then why. */
export function CauseView({ view, case: it, cause, certainty, besides, root, onReopen, onMove, children }: Props) {
  const { findings } = view.standing;
  const remedy = remedyOf(cause, findings);
  const ticks = ticksOf(it, cause.id, onMove);
  const split = view.splitOf(cause.id);
  const dear = isDear(remedy);
  const checkFirst = dear && certainty !== 'proved';
  // Read from top to bottom, each caution stands once: at the first thing that needs it.
  const [ofCheck, ofFix, ofProof] = inTurn(
    [cautionsOfCheck(cause, findings), cautionsOfFix(remedy, findings), cautionsOfProof(remedy, findings)],
    checkFirst ? [0, 1, 2] : [1, 0, 2],
  );
  const rested = useRested();
  const howSure = because(view, cause, certainty, dear, split?.isDone === true);
  const check = split && (
    <section class="check">
      <h2>{checkTitle(checkFirst, split.isDone)}</h2>
      <Cautions ids={ofCheck} />
      <p>
        <Terms text={split.text} root={root} />
      </p>
    </section>
  );
  return (
    <article class="verdict" aria-busy={rested ? undefined : true}>
      <h1 tabIndex={-1}>{remedy.what}</h1>
      <SayEnd {...tellCause(remedy, findings, { certainty, check: checkFirst ? split : undefined, ofCheck })} />
      <HowSure certainty={certainty} because={howSure} />
      {checkFirst && check}
      <div class="side-by-side">
        <div>
          <DoThis {...remedy} cautions={ofFix} ticks={ticks} />
          <Lines title="What to get" lines={remedy.parts} />
          <DontPayFor notBuy={remedy.notBuy} ifDoneAnyway={remedy.ifDoneAnyway} />
        </div>
        <div>
          <Numbers numbers={remedy.numbers.map((figure) => ({ label: figure.label, value: figureText(figure) }))} />
          {!checkFirst && check}
          <section class="prove">
            <h2>Prove the cure</h2>
            <Cautions ids={ofProof} />
            <ProofOfCure proof={remedy.proofOfCure} hasMeter={view.hasMeter} />
            {children}
          </section>
        </div>
      </div>
      {rested && (
        <Background
          {...{ view, cause, certainty, besides, root, onReopen, remedy, howSure, split }}
          cautions={[...ofCheck, ...ofFix, ...ofProof]}
        />
      )}
    </article>
  );
}
