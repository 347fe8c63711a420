import { useState } from 'preact/hooks';
import { parseQuantity } from '../../compute/quantity.ts';
import { isPossible, missingReadings, valuesIn } from '../../steps/outcome.ts';
import type { Answer, ReadingStep, Situation } from '../../steps/step.ts';
import { Scale } from './Scale.tsx';

interface Props {
  readonly step: ReadingStep;
  readonly situation: Situation;
  /** What was typed before, when an answer is changed or could not be used. */
  readonly typed: Readonly<Record<string, string>>;
  readonly showBandsAtOnce: boolean;
  readonly disabled: boolean;
  readonly onAnswer: (answer: Answer) => void;
}

const REALLY = 'If the meter really shows this, choose “I can’t do this”: we go on without it.';

/** What is wrong with one reading as typed, or null. */
function fault(step: ReadingStep, name: string, text: string): string | null {
  const reading = step.readings[name];
  if (!reading) return null;
  if (text.trim() === '') return reading.optional ? null : 'This reading is needed. Type what the meter shows.';
  const parsed = parseQuantity(text, reading.unit);
  if (!parsed.ok) return parsed.message;
  return isPossible(step, name, parsed.over ? Infinity : parsed.value) ? null : `${reading.impossible} ${REALLY}`;
}

/** The fields of a measurement. A reading falls on its scale when it is typed; nothing goes on from nonsense. */
export function ReadingForm({ step, situation, typed, showBandsAtOnce, disabled, onAnswer }: Props) {
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>(typed);
  const [tried, setTried] = useState(Object.keys(typed).length > 0);
  const names = Object.keys(step.readings);
  const answer: Answer = {
    readings: Object.fromEntries(names.flatMap((name) => (texts[name]?.trim() ? [[name, texts[name].trim()]] : []))),
  };
  const values = valuesIn(answer, step);
  const faults = Object.fromEntries(names.map((name) => [name, fault(step, name, texts[name] ?? '')]));
  const whole = missingReadings(step, values).length === 0 && names.every((name) => faults[name] === null);
  const unusable = whole ? (step.unusable?.(values, situation) ?? null) : null;
  // A scale over nothing, or over what cannot be, has no bands: such a reading is left out until it is mended.
  const positive = Object.fromEntries(
    Object.entries(values).filter(([name, value]) => value > 0 && faults[name] === null),
  );
  const outcome = whole && !unusable ? step.outcomes[step.judge(values, situation)] : undefined;

  const submit = (event: Event) => {
    event.preventDefault();
    setTried(true);
    if (whole && !unusable) onAnswer(answer);
    else {
      const first = names.find((name) => faults[name] !== null) ?? unusable?.reading;
      document.getElementById(`reading-${first}`)?.focus();
    }
  };

  return (
    <form onSubmit={submit} noValidate>
      {names.map((name) => {
        const reading = step.readings[name];
        if (!reading) return null;
        const text = texts[name] ?? '';
        const said =
          unusable?.reading === name
            ? unusable.message
            : tried || (text.trim() !== '' && values[name] !== undefined)
              ? faults[name]
              : null;
        const bands = step.bands(name, positive, situation);
        const value = faults[name] === null ? values[name] : undefined;
        return (
          <div key={name}>
            <div class="reading">
              <label for={`reading-${name}`}>
                {reading.label}
                {reading.optional && ' (if you have the time)'}
              </label>
              <input
                id={`reading-${name}`}
                type="text"
                inputMode="decimal"
                enterKeyHint="next"
                autocomplete="off"
                value={text}
                disabled={disabled}
                aria-invalid={said ? 'true' : undefined}
                aria-describedby={said ? `fault-${name}` : undefined}
                onInput={(event) => setTexts({ ...texts, [name]: event.currentTarget.value })}
                onKeyDown={(event) => {
                  // The key is called "next" on a phone: it goes on to the next field, and the last one sends.
                  const next = names[names.indexOf(name) + 1];
                  if (event.key !== 'Enter' || next === undefined) return;
                  event.preventDefault();
                  document.getElementById(`reading-${next}`)?.focus();
                }}
              />
              <span aria-hidden="true">{reading.unit}</span>
              {reading.unit === 'Ω' && isPossible(step, name, Infinity) && (
                <button
                  type="button"
                  class="open-circuit"
                  disabled={disabled}
                  onClick={() => setTexts({ ...texts, [name]: 'OL' })}
                >
                  OL<span class="sr-only">, open, for {reading.label}</span>
                </button>
              )}
            </div>
            {said && (
              <p class="reading-error" id={`fault-${name}`}>
                {said}
              </p>
            )}
            {bands && (value !== undefined || showBandsAtOnce) && (
              <Scale bands={bands} unit={reading.unit} value={value} label={reading.label} />
            )}
          </div>
        );
      })}
      {(outcome !== undefined || showBandsAtOnce) && <p class="hint">{step.healthy(positive, situation)}</p>}
      <button type="submit" class="go" disabled={disabled}>
        {outcome === undefined ? 'Go on' : `Go on: ${outcome}`}
      </button>
    </form>
  );
}
