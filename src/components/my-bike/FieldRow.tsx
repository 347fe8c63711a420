import { symbolOf } from '../../compute/units.ts';
import type { ChoiceField, Field, NumberField } from '../../rig/fields.ts';
import { allowedRange, standIn } from '../../rig/typed-field.ts';
import { helpOf } from './field-help.ts';

interface Props<F extends Field> {
  readonly path: string;
  readonly field: F;
  readonly text: string;
  /** What is wrong with it, once it is time to say so. */
  readonly error: string | undefined;
  /** Nothing is asked about somebody's bike: an empty field is the usual value, not one that nobody knows. */
  readonly usual?: boolean;
  readonly onType: (text: string) => void;
  /** The text is complete: it may be judged now. */
  readonly onDone: () => void;
}

export function FieldRow({ field, ...rest }: Props<Field>) {
  return field.kind === 'number' ? <NumberRow field={field} {...rest} /> : <ChoiceRow field={field} {...rest} />;
}

function NumberRow({ path, field, text, error, usual, onType, onDone }: Props<NumberField>) {
  const notKnown = text === '';
  const unit = symbolOf(field.unit).replace(/^(?:speaker|channel)$/, '');
  return (
    <div class="field">
      <label for={path}>
        {field.label}
        {unit && <span class="sr-only">, in {unit}</span>}
      </label>
      <p class="hint" id={`${path}-help`}>
        {helpOf(field)} From {allowedRange(field)}.
      </p>
      <div class="field-row">
        <input
          id={path}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={text}
          placeholder={usual ? String(Number((field.typical / field.siPerTyped).toPrecision(3))) : undefined}
          aria-describedby={`${path}-help ${path}-note`}
          aria-invalid={error !== undefined}
          onInput={(event) => onType(event.currentTarget.value)}
          onChange={onDone}
        />
        <span class="unit" aria-hidden="true">
          {unit}
        </span>
        <button type="button" class="unknown" aria-pressed={notKnown} onClick={() => onType('')}>
          {usual ? 'Usual' : 'I don’t know'}
          <span class="sr-only">: {field.label}</span>
        </button>
      </div>
      <p id={`${path}-note`} class={error ? 'error' : 'hint'}>
        {error ?? (notKnown ? `${usual ? '' : 'Not known. '}${standIn(field)}.` : '')}
      </p>
    </div>
  );
}

function ChoiceRow({ path, field, text, error, usual, onType }: Props<ChoiceField>) {
  const options = usual
    ? Object.entries(field.options)
    : [...Object.entries(field.options), ['', 'I don’t know'] as const];
  const chosen = usual && text === '' ? field.typical : text;
  return (
    <fieldset class="field" aria-describedby={`${path}-help`}>
      <legend>{field.label}</legend>
      <p class="hint" id={`${path}-help`}>
        {helpOf(field)}
      </p>
      <div class="radios">
        {options.map(([value, label]) => (
          <label key={value} class="radio">
            <input type="radio" name={path} value={value} checked={chosen === value} onChange={() => onType(value)} />
            {label}
          </label>
        ))}
      </div>
      {error && <p class="error">{error}</p>}
    </fieldset>
  );
}
