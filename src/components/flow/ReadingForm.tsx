import { useState } from 'preact/hooks';
import { missingReadings, valuesIn } from '../../steps/outcome.ts';
import type { Answer, ReadingStep, Situation } from '../../steps/step.ts';
import { fieldId, ReadingField } from './ReadingField.tsx';
import { type Fault, faultOf, isSaidWhileTyping } from './reading-fault.ts';
import { Scale } from './Scale.tsx';

interface Props {
  readonly step: ReadingStep;
  readonly situation: Situation;
  /** What stands in the fields at first. */
  readonly typed: Readonly<Record<string, string>>;
  /** Whether that was read the last time that this step was asked, and is only there to be typed over. */
  readonly fromLastTime: boolean;
  /** What was typed here and not sent, by field. */
  readonly draft: Readonly<Record<string, string>>;
  readonly showBandsAtOnce: boolean;
  readonly disabled: boolean;
  /** The field in hand: the bands of its scale are named, those of the others only drawn. */
  readonly reached: string;
  /** A field was reached. */
  readonly onReach: (reading: string) => void;
  readonly onType: (reading: string, text: string) => void;
  readonly onAnswer: (answer: Answer) => void;
}

/** The fields of a measurement. A reading falls on its scale when it is typed; nothing goes on from nonsense. */
export function ReadingForm(props: Props) {
  const { step, situation, typed, fromLastTime, draft, showBandsAtOnce, disabled, reached, onReach, onType, onAnswer } =
    props;
  const [texts, setTexts] = useState({ ...typed, ...draft });
  const [tried, setTried] = useState(!fromLastTime && Object.keys(typed).length > 0);
  /** Fields that hold what was read before, and wait to be typed over. */
  const [old, setOld] = useState<ReadonlySet<string>>(
    new Set(fromLastTime ? Object.keys(typed).filter((name) => !Object.hasOwn(draft, name)) : []),
  );
  /** Fields that were left with something in them. */
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const names = Object.keys(step.readings);
  const answer: Answer = {
    readings: Object.fromEntries(names.flatMap((name) => (texts[name]?.trim() ? [[name, texts[name].trim()]] : []))),
  };
  const values = valuesIn(answer, step);
  const faults = Object.fromEntries(names.map((name) => [name, faultOf(step, name, texts[name] ?? '')]));
  const whole = missingReadings(step, values).length === 0 && names.every((name) => faults[name] === null);
  const unusable = whole ? (step.unusable?.(values, situation) ?? null) : null;
  // A scale over nothing, or over what cannot be, has no bands: such a reading is left out until it is mended.
  const positive = Object.fromEntries(
    Object.entries(values).filter(([name, value]) => value > 0 && faults[name] === null),
  );
  const outcome = whole && !unusable && old.size === 0 ? step.outcomes[step.judge(values, situation)] : undefined;

  const type = (name: string, text: string) => {
    setTexts({ ...texts, [name]: text });
    setOld(new Set([...old].filter((other) => other !== name)));
    onType(name, text);
  };
  const submit = (event: Event) => {
    event.preventDefault();
    setTried(true);
    if (whole && !unusable) onAnswer(answer);
    else
      document.getElementById(fieldId(names.find((name) => faults[name] !== null) ?? unusable?.reading ?? ''))?.focus();
  };
  const leave = (name: string) => {
    if (texts[name]?.trim() && !old.has(name)) setLeft(new Set([...left, name]));
  };
  const faultShown = (name: string): Fault | null => {
    if (unusable?.reading === name) return old.size === 0 || tried ? unusable : null;
    const [text = '', reading] = [texts[name], step.readings[name]];
    const said = tried || (left.has(name) && text.trim() !== '') || (reading && isSaidWhileTyping(text, reading));
    return (said && faults[name]) || null;
  };

  return (
    <form onSubmit={submit} noValidate>
      {fromLastTime && (
        <p class="notice">The fields show what you read last time. Measure again and change what is different.</p>
      )}
      {names.map((name) => {
        const reading = step.readings[name];
        if (!reading) return null;
        const bands = step.bands(name, positive, situation);
        const value = faults[name] === null && !old.has(name) ? values[name] : undefined;
        return (
          <div key={name}>
            <ReadingField
              step={step}
              name={name}
              reading={reading}
              text={texts[name] ?? ''}
              old={old.has(name)}
              fault={faultShown(name)}
              disabled={disabled}
              onText={(text) => type(name, text)}
              onReach={() => onReach(name)}
              onLeave={() => leave(name)}
            />
            {bands && (value !== undefined || showBandsAtOnce) && (
              <Scale
                bands={bands}
                unit={reading.unit}
                value={value}
                label={reading.label}
                whole={showBandsAtOnce || reached === name}
                inHand={reached === name && value !== undefined}
              />
            )}
          </div>
        );
      })}
      {(outcome !== undefined || showBandsAtOnce) && <p class="hint">{step.healthy(positive, situation)}</p>}
      <button type="submit" class="go" disabled={disabled}>
        {outcome !== undefined ? `Go on: ${outcome}` : old.size > 0 ? 'Go on with the old readings' : 'Go on'}
      </button>
    </form>
  );
}
