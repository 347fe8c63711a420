/** A share as a thin bar. What it says stands beside it in words. */
export function ShareBar({ shareRatio }: { readonly shareRatio: number }) {
  return (
    <svg class="share" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
      <rect class="unsure" width="100" height="4" />
      <rect class="copper" width={Math.max(1, Math.round(100 * shareRatio))} height="4" />
    </svg>
  );
}
