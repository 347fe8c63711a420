import type { useCase } from '../../browser/use-case.ts';
import type { Parts } from './use-parts.ts';

interface Props {
  readonly session: ReturnType<typeof useCase>;
  readonly parts: Parts | undefined;
  readonly title: string;
  readonly canGoBack: boolean;
}

/** What can be done with the case as a whole. */
export function CaseTools({ session, parts, title, canGoBack }: Props) {
  const { case: it, standing, move, goBack, startAgain } = session;
  return (
    <div class="case-tools">
      {goBack && canGoBack && (
        <button type="button" class="plain" onClick={goBack}>
          Back one step
        </button>
      )}
      {it.events.length > 1 && (
        <>
          {parts && <parts.common.Notes case={it} notes={standing.notes} onNote={move} />}
          {parts && <parts.common.Share case={it} title={`Sidestand: ${title}`} />}
          <button type="button" class="plain" onClick={startAgain}>
            Start a new case
          </button>
        </>
      )}
      {parts && <parts.common.CaseFile case={it} canSave={it.events.length > 1} />}
    </div>
  );
}
