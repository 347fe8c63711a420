import { useState } from 'preact/hooks';
import type { Case } from '../case/events.ts';
import { draftOf, keepDraft } from './drafts.ts';

const TICKED = 'done';

export interface Ticks {
  has(line: string): boolean;
  toggle(line: string): void;
}

/** The lines of a fix that were ticked. They are kept with the case, and gone once its repair did not help. */
export function useTicks(it: Case, fix: string): Ticks {
  const key = `fix ${fix}`;
  const [ticked, setTicked] = useState(() => draftOf(it, key));
  return {
    has: (line) => ticked[line] === TICKED,
    toggle: (line) => {
      const { [line]: was, ...others } = ticked;
      const next = was === undefined ? { ...others, [line]: TICKED } : others;
      setTicked(next);
      keepDraft(it, key, next);
    },
  };
}
