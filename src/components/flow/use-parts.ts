import { useEffect, useState } from 'preact/hooks';
import type { Late, StagedFlow } from '../../../machines/machine.ts';
import type { Flow } from '../../../machines/rows.ts';
import { whenIdle } from '../../browser/when-idle.ts';

/** What the first question of a flow does not need. */
export interface Parts {
  readonly common: typeof import('./parts.ts');
  /** Of a fault flow: its screens, all of it, and what its causes show and how they are mended. */
  readonly fault?: typeof import('../fault/parts.ts') & { readonly flow: StagedFlow; readonly late: Late };
  /** Of a flow of rows: its screens, and all of it. */
  readonly plan?: typeof import('../plan/parts.ts') & { readonly flow: Flow };
}
export type LoadParts = () => Promise<Parts>;

export interface Fetched {
  readonly parts: Parts | undefined;
  readonly missing: boolean;
  /** Fetches them at once: what is open needs them. */
  readonly fetchNow: () => void;
}

/** The parts of the page that the first question does not need, fetched when the page is idle. */
export function useParts(load: LoadParts): Fetched {
  const [parts, setParts] = useState<Parts>();
  const [missing, setMissing] = useState(false);
  const fetchNow = () => {
    load().then(
      (them) => {
        setParts(them);
        setMissing(false);
      },
      () => setMissing(true),
    );
  };
  useEffect(() => void whenIdle(fetchNow, 2000), []);
  return { parts, missing, fetchNow };
}
