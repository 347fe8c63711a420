import { isPossible } from '../../steps/outcome.ts';
import type { Reading, ReadingStep } from '../../steps/step.ts';
import type { Fault } from './reading-fault.ts';

interface Props {
  readonly step: ReadingStep;
  readonly name: string;
  readonly reading: Reading;
  readonly text: string;
  /** Whether its text is only there to be typed over. */
  readonly old: boolean;
  /** What is wrong with it, once it is time to say so. */
  readonly fault: Fault | null;
  readonly disabled: boolean;
  readonly onText: (text: string) => void;
  readonly onReach: () => void;
  readonly onLeave: () => void;
}

export const fieldId = (reading: string) => `reading-${reading}`;

/** The phone's key is called "next": it goes on to the next field, and the last one sends. */
function goOn(event: KeyboardEvent, { step, name }: Props): void {
  const names = Object.keys(step.readings);
  const next = names[names.indexOf(name) + 1];
  if (event.key !== 'Enter' || next === undefined) return;
  event.preventDefault();
  const field = document.getElementById(fieldId(next)) as HTMLInputElement | null;
  field?.focus();
  field?.select();
}

/**
 * A button below sees to the faults by itself, and a sentence that appears between its press and its release would push
 * it from under the finger. The button beside the field stays where it is.
 */
const goesToAButton = ({ relatedTarget, currentTarget }: FocusEvent) =>
  relatedTarget instanceof HTMLButtonElement &&
  !(currentTarget as Element).closest('.reading')?.contains(relatedTarget);

/** The field of one reading, with its unit and, for ohms, a key for an open circuit. */
export function ReadingField(props: Props) {
  const { step, name, reading, text, old, fault, disabled, onText, onReach, onLeave } = props;
  const takeMeaning = (meant: string) => {
    onText(meant);
    document.getElementById(fieldId(name))?.focus(); // the button goes away with the question
  };
  return (
    <>
      <div class="reading">
        <label for={fieldId(name)}>
          {reading.label}
          {reading.optional && <span class="hint"> if you have the time</span>}
        </label>
        <span class="field">
          <input
            id={fieldId(name)}
            type="text"
            inputMode="decimal"
            enterKeyHint="next"
            autocomplete="off"
            class={old ? 'old' : undefined}
            value={text}
            disabled={disabled}
            aria-invalid={fault ? 'true' : undefined}
            aria-describedby={fault ? `fault-${name}` : undefined}
            onInput={(event) => onText(event.currentTarget.value)}
            onFocus={onReach}
            onBlur={(event) => !goesToAButton(event) && onLeave()}
            // A tap puts the caret into the old number, and the click comes after it.
            onClick={(event) => old && event.currentTarget.select()}
            onKeyDown={(event) => goOn(event, props)}
          />
          <span class="unit" aria-hidden="true">
            {reading.unit}
          </span>
        </span>
        {reading.unit === 'Ω' && isPossible(step, name, Infinity) && (
          <button type="button" class="open-circuit" disabled={disabled} onClick={() => onText('OL')}>
            OL<span class="sr-only">, open, for {reading.label}</span>
          </button>
        )}
      </div>
      {fault && (
        <p class="reading-error" id={`fault-${name}`}>
          {fault.message}
        </p>
      )}
      {fault?.meanings && (
        <p class="meanings">
          {fault.meanings.map(({ label, text: meant }) => (
            <button key={meant} type="button" disabled={disabled} onClick={() => takeMeaning(meant)}>
              {label}
              <span class="sr-only">, for {reading.label}</span>
            </button>
          ))}
        </p>
      )}
    </>
  );
}
