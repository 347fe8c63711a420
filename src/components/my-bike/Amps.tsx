import { AMP_FIELDS, type AmpFieldId } from '../../rig/fields.ts';
import type { Typed } from '../../rig/typed-field.ts';
import { MOST_AMPS } from '../../rig/validate.ts';
import { type AmpsKnown, ampPath, ampsListed, type Draft, withoutAmp } from './bike-form.ts';
import { FieldRow } from './FieldRow.tsx';
import { Group } from './Group.tsx';

interface Props {
  readonly draft: Draft;
  readonly errorAt: (path: string) => string | undefined;
  readonly onDraft: (draft: Draft) => void;
  readonly onType: (path: string, draft: Draft) => void;
  readonly onDone: (path: string) => void;
}

const ANSWERS: readonly (readonly [AmpsKnown, string])[] = [
  ['none', 'None'],
  ['some', 'One or more'],
  ['unknown', 'I don’t know'],
];
const FIELDS = Object.entries(AMP_FIELDS) as [AmpFieldId, (typeof AMP_FIELDS)[AmpFieldId]][];

/** Whether there are amplifiers, and what is known of each. */
export function Amps({ draft, errorAt, onDraft, onType, onDone }: Props) {
  const { ampsKnown, amps } = draft;
  const say = (known: AmpsKnown) =>
    onDraft({ ...draft, ampsKnown: known, amps: known === 'some' && amps.length === 0 ? [{}] : amps });
  const change = (index: number, amp: Typed) => ({ ...draft, amps: amps.map((old, i) => (i === index ? amp : old)) });

  return (
    <Group
      title="Amplifiers"
      helps="Says which gain, which fuse and which lead your amplifier needs."
      known={ampsListed(draft)}
    >
      <fieldset class="field">
        <legend>How many are there?</legend>
        <p class="hint">
          Look under the seat, in the lids and in the fairing. A fused lead from the battery gives one away.
        </p>
        <div class="radios">
          {ANSWERS.map(([known, label]) => (
            <label key={known} class="radio">
              <input type="radio" name="amps" value={known} checked={ampsKnown === known} onChange={() => say(known)} />
              {label}
            </label>
          ))}
        </div>
      </fieldset>
      {ampsKnown === 'some' && (
        <div class="amps">
          {amps.map((amp, i) => (
            <fieldset key={i} class="amp">
              <legend>Amplifier {i + 1}</legend>
              {FIELDS.map(([id, field]) => (
                <FieldRow
                  key={id}
                  path={ampPath(i, id)}
                  field={field}
                  text={amp[id] ?? ''}
                  error={errorAt(ampPath(i, id))}
                  onType={(text) => onType(ampPath(i, id), change(i, { ...amp, [id]: text }))}
                  onDone={() => onDone(ampPath(i, id))}
                />
              ))}
              <button type="button" class="plain" onClick={() => onDraft(withoutAmp(draft, i))}>
                Remove amplifier {i + 1}
              </button>
            </fieldset>
          ))}
        </div>
      )}
      {ampsKnown === 'some' &&
        (amps.length < MOST_AMPS ? (
          <button type="button" onClick={() => onDraft({ ...draft, amps: [...amps, {}] })}>
            Add another amplifier
          </button>
        ) : (
          <p class="hint">{MOST_AMPS} amplifiers are the most that fit here.</p>
        ))}
    </Group>
  );
}
