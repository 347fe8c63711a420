import type { Situation, Step } from '../../steps/step.ts';
import type { Ready } from './ready.ts';
import { spokenLines } from './spoken-lines.ts';

interface Props {
  readonly step: Step;
  readonly situation: Situation;
  readonly ready: Ready;
  /** Why it is asked once more, and what he has to do for it. */
  readonly doubt?: string | undefined;
}

/** What is said to a caller, line by line, and what is easily misheard of his answer. */
export function Say({ step, situation, ready, doubt }: Props) {
  return (
    <div class="say seat-only-phone">
      <p class="hint">Say, one line at a time:</p>
      {spokenLines(step, situation, ready, doubt).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {ready.misheard !== undefined && (
        <p class="hint">
          <b>Easily misheard:</b> {ready.misheard}
        </p>
      )}
    </div>
  );
}
