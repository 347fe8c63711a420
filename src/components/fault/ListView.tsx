import type { CautionId } from '../../steps/cautions.ts';
import type { Step } from '../../steps/step.ts';
import { Cautions } from '../caution/Cautions.tsx';
import { SayEnd } from '../flow/SayEnd.tsx';
import { Sheet } from '../flow/Sheet.tsx';
import { useRested } from '../flow/use-rested.ts';
import { ForTheWorkshop } from './ForTheWorkshop.tsx';
import { cautionsByCause, listSections, measuredFirst } from './list-sections.ts';
import { ShareBar } from './ShareBar.tsx';
import { tellList } from './say-verdict.ts';
import { shareInWords } from './shares.ts';
import { type FaultView, UNTHOUGHT } from './view.ts';

interface Props {
  readonly view: FaultView;
  readonly causes: readonly string[];
  readonly onReopen: (step: Step) => void;
  readonly onPick: (cause: string) => void;
  readonly onNotIt: (cause: string) => void;
  /** Goes on in the flow that looks for a cause; undefined where the case has just come from there. */
  readonly onGo: ((cause: string) => void) | undefined;
}

/** One of those who are left: how likely, the check that separates it, and what that check says. */
function Left({
  view,
  cause,
  cautions,
  onPick,
  onNotIt,
  onGo,
}: Omit<Props, 'causes' | 'onReopen'> & { readonly cause: string; readonly cautions: readonly CautionId[] }) {
  const share = view.shareOf(cause);
  // A bar over a check that was passed would be believed instead of it.
  const isAgainst = view.splitOf(cause)?.isAgainst === true;
  const elsewhere = view.lookedForBy(cause);
  return (
    <li class="left">
      <h2>{view.nameOf(cause)}</h2>
      <p class="hint">
        {isAgainst ? `${shareInWords(share)}, although its check came out against it` : shareInWords(share)}
        {!isAgainst && <ShareBar shareRatio={share} />}
      </p>
      <Cautions ids={cautions} />
      <p>{view.checkOf(cause)}</p>
      {!elsewhere && (
        <button type="button" onClick={() => onPick(cause)}>
          This is it<span class="sr-only"> – {view.nameOf(cause)}</span>
        </button>
      )}
      {elsewhere && onGo && (
        <button type="button" onClick={() => onGo(cause)}>
          Go on with “{elsewhere.title}”
        </button>
      )}
      {view.ruledOut.has(cause) ? (
        <p class="hint">You ruled it out.</p>
      ) : (
        <button type="button" class="plain" onClick={() => onNotIt(cause)}>
          It is not this<span class="sr-only"> – {view.nameOf(cause)}</span>
        </button>
      )}
    </li>
  );
}

/** When what nobody thought of has so large a share, no cause of the list explains what was answered. */
const EXPLAINS_NOTHING_SHARE = 0.5;

/** What can honestly be said of a list: it holds the cause, it may not, or it does not. */
function saidOf(view: FaultView, causes: readonly string[]): { readonly title: string; readonly text: string } {
  const [first] = view.shares;
  const unthought = first?.cause === UNTHOUGHT ? first.shareRatio : 0;
  if (causes.length === 0 || unthought >= EXPLAINS_NOTHING_SHARE)
    return {
      title: 'Nothing in this list explains all of it',
      text: 'No cause that is known here fits everything that was answered. It is one that is not in this list, two at once, or an answer that was taken at another place than was meant. What is known stands below.',
    };
  if (unthought > 0)
    return {
      title: 'What is known points to no one cause',
      text: `Nothing that was answered speaks clearly for any of them. The likeliest stand here, each with its check${measuredFirst(view).length > 0 ? '; what would tell most stands at the end' : ''}.`,
    };
  return {
    title: causes.length === 1 ? 'It may be this' : `It is most likely one of these ${causes.length}`,
    text: 'No question that can be answered here tells more. Each has a check that does.',
  };
}

/** Those who are left where nothing that can be asked here tells them apart. */
export function ListView({ view, causes, onReopen, ...acts }: Props) {
  const { title, text } = saidOf(view, causes);
  const unthought = view.shares[0]?.cause === UNTHOUGHT || causes.length === 0;
  const inOrder = causes.toSorted((a, b) => Number(view.ruledOut.has(a)) - Number(view.ruledOut.has(b)));
  const cautions = cautionsByCause(view, inOrder);
  const rested = useRested();
  return (
    <article class="verdict" aria-busy={rested ? undefined : true}>
      <h1 tabIndex={-1}>{title}</h1>
      <SayEnd {...tellList(view, causes)} />
      <p>{text}</p>
      {causes.length > 0 && (
        <ol class="lefts">
          {inOrder.map((cause) => (
            <Left key={cause} view={view} cause={cause} cautions={cautions.get(cause) ?? []} {...acts} />
          ))}
        </ol>
      )}
      {rested && (unthought || !view.hasMeter) && (
        <ForTheWorkshop
          view={view}
          causes={causes.length > 0 ? causes : view.shares.slice(0, 3).map(({ cause }) => cause)}
          title={view.hasMeter ? 'What is known, and what comes next' : 'What to tell the workshop'}
          onReopen={onReopen}
        />
      )}
      {rested && <Sheet title={view.flow.title} sections={listSections(view, inOrder, title)} />}
    </article>
  );
}
