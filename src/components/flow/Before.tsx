import { Cautions } from '../caution/Cautions.tsx';
import type { Ready } from './ready.ts';

interface Props {
  readonly ready: Ready;
  /** Whether it was done a moment ago: then it takes one line, and can be opened again. */
  readonly isDone: boolean;
}

/** What to be careful of and what has to be done before the question: what goes back together, what is set up, what still stands. */
export function Before({ ready: { bike, standing, brought, cautions, own }, isDone }: Props) {
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
        <Cautions ids={own} />
        <details class="before">
          <summary>Ready: {[...standing, ...brought].join(', ')}</summary>
          <Cautions ids={cautions.filter((id) => !own.includes(id))} />
          {steps}
        </details>
      </>
    );
  return (
    <>
      <Cautions ids={cautions} />
      {bike.length + standing.length > 0 && (
        <section class="before" aria-label="Before this">
          {steps}
          {standing.length > 0 && <p class="hint">As it stands: {standing.join(', ')}.</p>}
        </section>
      )}
    </>
  );
}
