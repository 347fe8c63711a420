import type { Ready } from './ready.ts';

/** What has to be done before the question: what goes back together, what is set up, and what still stands. */
export function Before({ ready: { bike, standing } }: { readonly ready: Ready }) {
  if (bike.length + standing.length === 0) return null;
  return (
    <section class="before" aria-label="Before this">
      {bike.length > 0 && (
        <ol>
          {bike.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      )}
      {standing.length > 0 && <p class="hint">As it stands: {standing.join(', ')}.</p>}
    </section>
  );
}
