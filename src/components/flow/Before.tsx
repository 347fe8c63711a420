import { conditionOf } from '../../steps/conditions.ts';
import { CONDITION_NAMES } from './condition-names.ts';
import type { Ready } from './ready.ts';

/** What has to be done before the question: what goes back together, what is set up, and what still stands. */
export function Before({ ready: { putBack, next, standing } }: { readonly ready: Ready }) {
  const lines = [...putBack.map((id) => conditionOf(id).undo), ...next.map((id) => conditionOf(id).bike)];
  if (lines.length + standing.length === 0) return null;
  return (
    <section class="before" aria-label="Before this">
      {lines.length > 0 && (
        <ol>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      )}
      {standing.length > 0 && <p class="hint">As it stands: {standing.map((id) => CONDITION_NAMES[id]).join(', ')}.</p>}
    </section>
  );
}
