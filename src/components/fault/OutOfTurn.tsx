import { useState } from 'preact/hooks';
import { outcomeNamed } from '../../steps/outcome.ts';
import { inWords, type Step } from '../../steps/step.ts';
import type { FaultView } from './view.ts';

/** The steps that make sense now and are not answered: any of them may have been done before the page asked. */
export const answerableNow = ({ flow, standing: { findings } }: Pick<FaultView, 'flow' | 'standing'>, now: Step) =>
  [...flow.steps.values()].filter(
    (step) =>
      step.id !== now.id && outcomeNamed(findings, step.id) === undefined && (step.sensible?.(findings) ?? true),
  );

interface Props {
  readonly view: FaultView;
  /** The question that is open. */
  readonly now: Step;
  readonly onOpen: (step: Step) => void;
}

/** Who has measured something already need not wait until the page asks for it. */
export function OutOfTurn({ view, now, onOpen }: Props) {
  const [open, setOpen] = useState(false);
  const steps = answerableNow(view, now);
  if (steps.length === 0) return null;
  return (
    <details class="out-of-turn" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>I already measured that</summary>
      {open && (
        <>
          <p class="hint">Pick what you know. It counts as if it had been asked.</p>
          <ul>
            {steps.map((step) => (
              <li key={step.id}>
                <button type="button" class="plain" onClick={() => onOpen(step)}>
                  {inWords(step.short, view.standing)}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}
