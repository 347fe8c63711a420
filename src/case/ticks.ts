import { doneOf, withDone } from './change.ts';
import type { Case } from './events.ts';
import { markOf } from './mark.ts';

export interface Ticks {
  has(line: string): boolean;
  toggle(line: string): void;
}

/** The lines of a fix that were ticked. They are part of the case, so a link and a file have them too. */
export function ticksOf(it: Case, fix: string, onMove: (next: Case) => void): Ticks {
  const done = doneOf(it, fix);
  return {
    has: (line) => done.includes(markOf(line)),
    toggle: (line) => {
      const mark = markOf(line);
      onMove(withDone(it, fix, done.includes(mark) ? done.filter((one) => one !== mark) : [...done, mark]));
    },
  };
}
