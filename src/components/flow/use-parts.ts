import { useEffect, useState } from 'preact/hooks';
import type { TableFor } from '../../verdicts/made-table.ts';

/** The parts, and with them the suspects of the flow: a plan has none. */
export type Parts = typeof import('./parts.ts') & { readonly tableFor: TableFor | undefined };
export type LoadTable = () => Promise<TableFor>;

/** The page may rest before it fetches what nobody waits for; not every browser can say when it does. */
const whenIdle = (then: () => void) =>
  typeof requestIdleCallback === 'function' ? requestIdleCallback(then, { timeout: 2000 }) : setTimeout(then, 200);

/**
 * The parts of the page that the first question does not need. They are fetched when the page is idle, or at once when
 * what is open needs them; later pages of the case find them there.
 */
export function useParts(
  needed: boolean,
  loadTable: LoadTable | undefined,
): { readonly parts: Parts | undefined; readonly missing: boolean } {
  const [parts, setParts] = useState<Parts>();
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    if (parts) return;
    const fetchThem = () => {
      Promise.all([import('./parts.ts'), loadTable?.()]).then(
        ([them, tableFor]) => {
          setParts({ ...them, tableFor });
          setMissing(false);
        },
        () => setMissing(true),
      );
    };
    if (needed) fetchThem();
    else whenIdle(fetchThem);
  }, [needed]);
  return { parts, missing };
}
