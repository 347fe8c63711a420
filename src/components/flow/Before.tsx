import type { CautionId } from '../../steps/cautions.ts';
import { Cautions } from '../caution/Cautions.tsx';
import { asBefore, type Ready } from './ready.ts';

interface Props {
  readonly ready: Ready;
  /** Whether it was done a moment ago: then it takes one line, and can be opened again. */
  readonly isDone: boolean;
}

/** What to be careful of: what is new at this question in full, what was read before by its name. */
function Care({ ids, readBefore }: { readonly ids: readonly CautionId[]; readonly readBefore: readonly CautionId[] }) {
  const again = ids.filter((id) => readBefore.includes(id));
  return (
    <>
      <Cautions ids={ids.filter((id) => !again.includes(id))} />
      {again.length > 0 && (
        <details>
          <summary>{asBefore(again)}</summary>
          <Cautions ids={again} />
        </details>
      )}
    </>
  );
}

/** What to be careful of and what has to be done before the question: what goes back together, what is set up, what still stands. */
export function Before({ ready: { bike, standing, brought, cautions, own, readBefore }, isDone }: Props) {
  const steps = bike.length > 0 && (
    <ol>
      {bike.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ol>
  );
  if (isDone)
    return (
      <>
        <Care ids={own} readBefore={readBefore} />
        <details class="before">
          <summary>Ready: {[...standing, ...brought].join(', ')}</summary>
          <Cautions ids={cautions.filter((id) => !own.includes(id))} />
          {steps}
        </details>
      </>
    );
  return (
    <>
      <Care ids={cautions} readBefore={readBefore} />
      {bike.length + standing.length > 0 && (
        <section class="before" aria-label="Before this">
          {steps}
          {standing.length > 0 && <p class="hint">As it stands: {standing.join(', ')}.</p>}
        </section>
      )}
    </>
  );
}
