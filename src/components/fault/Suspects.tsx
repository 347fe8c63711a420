import { useEffect, useState } from 'preact/hooks';
import type { Moved } from '../../inference/evidence.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import { inWords } from '../../steps/step.ts';
import { speaking } from './Evidence.tsx';
import { ShareBar } from './ShareBar.tsx';
import { shareInWords } from './shares.ts';
import { type FaultView, UNTHOUGHT } from './view.ts';

/** A cause below this is unlikely now. It is never impossible, so it stays in the list, folded. */
const LIKELY_ENOUGH_SHARE = 0.01;
const MOVED_BY = 2;

/** An answer in a few words: what it was about, and what it meant on this bike. */
function inBrief({ flow, standing }: FaultView, id: string): string | undefined {
  const step = flow.steps.get(id);
  const outcome = outcomeNamed(standing.findings, id) ?? '';
  return step && `${inWords(step.short, standing)}: ${step.outcomes[outcome] ?? outcome}`;
}

const BECAUSE = { for: 'for it: ', against: 'against it: ', misfit: 'not explained by it: ' } as const;

function Because({ view, answers }: { readonly view: FaultView; readonly answers: readonly Moved[] }) {
  return (
    <>
      {answers.map(({ step, speaks }) => (
        <span class="because" key={step}>
          {BECAUSE[speaks ?? 'misfit']}
          {inBrief(view, step)}
        </span>
      ))}
    </>
  );
}

/** Who is unlikely now, gathered by the answer that spoke most against each. */
function Unlikely({ view, causes }: { readonly view: FaultView; readonly causes: readonly string[] }) {
  const byAnswer = Map.groupBy(causes, (cause) => {
    const [most] = view.moved(cause).toSorted((a, b) => a.bits - b.bits);
    return most && most.speaks === 'against' ? inBrief(view, most.step) : undefined;
  });
  return (
    <details>
      <summary>Unlikely now: {causes.length}</summary>
      <ul class="suspects">
        {[...byAnswer].map(([answer = 'Seldom among callers, or unlikely all together', own]) => (
          <li key={answer}>
            <span class="because">{answer}</span>
            {own.map(view.nameOf).join('; ')}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Who is suspected, the likeliest first, with what moved each; and who is unlikely now, with what spoke most against it. */
export function SuspectList({ view }: { readonly view: FaultView }) {
  const open = view.shares.filter(({ cause }) => !view.ruledOut.has(cause));
  const likely = open.filter(({ shareRatio }) => shareRatio >= LIKELY_ENOUGH_SHARE);
  const unlikely = open.filter((one) => !likely.includes(one) && one.cause !== UNTHOUGHT);
  return (
    <>
      <ol class="suspects">
        {likely.map(({ cause, shareRatio }) => (
          <li key={cause}>
            {view.nameOf(cause)} <span class="hint">{shareInWords(shareRatio)}</span>
            <ShareBar shareRatio={shareRatio} />
            {cause !== UNTHOUGHT && <Because view={view} answers={speaking(view, cause, MOVED_BY)} />}
          </li>
        ))}
        {[...view.ruledOut].map((cause) => (
          <li key={cause}>
            <s>{view.nameOf(cause)}</s>{' '}
            <span class="hint">{view.causeOf(cause) ? 'you ruled it out by its check' : 'you ruled it out'}</span>
          </li>
        ))}
      </ol>
      {unlikely.length > 0 && <Unlikely view={view} causes={unlikely.map(({ cause }) => cause)} />}
      <p class="hint">
        The odds come from a model of the bike and from what callers usually have. They rank; they prove nothing.
      </p>
    </>
  );
}

const BESIDE = '(min-width: 62em)';

function useBeside(): boolean {
  const [beside, setBeside] = useState(() => matchMedia(BESIDE).matches);
  useEffect(() => {
    const room = matchMedia(BESIDE);
    const look = () => setBeside(room.matches);
    room.addEventListener('change', look);
    return () => room.removeEventListener('change', look);
  }, []);
  return beside;
}

/** The list of suspects: beside the wire where there is room for it, else folded at the foot of the page. */
export function Suspects({ view }: { readonly view: FaultView }) {
  const [open, setOpen] = useState(false);
  const beside = useBeside();
  // Where the case goes on in another flow, the causes of this one are out of question.
  if (view.standing.open.kind === 'onward') return null;
  if (beside)
    return (
      <aside class="strip" aria-labelledby="suspects-title">
        <h2 id="suspects-title">What it can be</h2>
        <SuspectList view={view} />
      </aside>
    );
  const [first] = view.shares;
  // Before anything is known of this bike, the odds are those of all callers: no help at the foot of a phone.
  if (view.standing.terminals.length === 0) return null;
  return (
    <details class="strip" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="sr-only">What it can be: </span>
        {first && (
          <>
            <b>{view.nameOf(first.cause)}</b>, {shareInWords(first.shareRatio)}
          </>
        )}
      </summary>
      {open && <SuspectList view={view} />}
    </details>
  );
}
