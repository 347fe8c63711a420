import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { download } from '../../browser/download.ts';
import { whyNotSaved } from '../../browser/storage.ts';
import { dayInWords } from '../../rig/day.ts';
import { EXAMPLE_RIGS } from '../../rig/examples.ts';
import { BIKE_FIELDS } from '../../rig/fields.ts';
import { Amps } from './Amps.tsx';
import {
  type Draft,
  doubtsAbout,
  draftOf,
  EMPTY_DRAFT,
  fileNameOf,
  filledIn,
  groupsOf,
  readDraft,
  rigFromFile,
} from './bike-form.ts';
import { FieldRow } from './FieldRow.tsx';
import { Group } from './Group.tsx';
import { withKept } from './kept-fields.ts';
import { loadBike, saveBike } from './stored-bike.ts';

/** What was just done to the whole form, and how it was before. */
interface Replaced {
  readonly says: string;
  readonly problems: readonly string[];
  readonly before?: Draft;
}

/** What the form would have saved. */
const textOf = (draft: Draft): string => JSON.stringify(withKept(readDraft(draft).rig, draft.kept));

/** The form of "my bike": everything is optional, and what can be used is saved as it is typed. */
export function MyBike() {
  const [draft, setDraft] = useState<Draft>(EMPTY_DRAFT);
  const [ready, setReady] = useState(false);
  /** Fields that have been left once: their faults are shown. While somebody types, nothing is judged. */
  const [judged, setJudged] = useState<ReadonlySet<string>>(new Set());
  const [replaced, setReplaced] = useState<Replaced>();
  const [saved, setSaved] = useState('');
  const lastSaved = useRef('');
  const { rig, errors } = useMemo(() => readDraft(draft), [draft]);
  const doubts = doubtsAbout(rig);
  const groups = groupsOf(draft.bike);
  const faults = Object.keys(errors).length;

  useEffect(() => {
    const loaded = loadBike();
    const opened = draftOf(loaded.rig, loaded.kept);
    lastSaved.current = textOf(opened);
    setDraft(opened);
    if (loaded.notice) setReplaced({ says: loaded.notice, problems: loaded.refused });
    setReady(true);
  }, []);

  useEffect(() => {
    const text = textOf(draft);
    if (!ready || text === lastSaved.current) return;
    lastSaved.current = text;
    setSaved(whyNotSaved(saveBike(rig, draft.kept)) ?? 'Saved on this device.');
  }, [draft, ready]);

  const replace = (next: Draft, says: string, problems: readonly string[] = []) => {
    setReplaced({ says, problems, before: draft });
    setJudged(new Set());
    setDraft(next);
  };
  const putBack = (before: Draft) => {
    setReplaced(undefined);
    setDraft(before);
  };
  const onType = (path: string, next: Draft) => {
    setJudged((old) => new Set([...old].filter((each) => each !== path)));
    setDraft(next);
  };
  const onDone = (path: string) => setJudged((old) => new Set([...old, path]));
  const errorAt = (path: string) => (judged.has(path) ? errors[path] : undefined);

  const open = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (!file) return;
    const read = rigFromFile(await file.text());
    input.value = ''; // so that the same file can be chosen again
    if ('error' in read) setReplaced({ says: read.error, problems: [] });
    else replace(draftOf(read.rig, read.kept), `The bike in ${file.name} is filled in below.`, read.refused);
  };

  return (
    <form class="bike" onSubmit={(event) => event.preventDefault()}>
      <fieldset disabled={!ready}>
        <legend class="sr-only">My bike</legend>
        <Start onExample={(name, next) => replace(next, `“${name}” is filled in below.`)} onFile={open} />
        <div role="status">{replaced && <Happened {...replaced} onPutBack={putBack} />}</div>

        <div class="field name">
          <label for="name">What you call it</label>
          <p class="hint" id="name-help">
            Only you see it. It can stay empty.
          </p>
          <input
            id="name"
            type="text"
            maxLength={60}
            autocomplete="off"
            aria-describedby="name-help"
            value={draft.name}
            onInput={(event) => setDraft({ ...draft, name: event.currentTarget.value })}
          />
        </div>
        <p class="filled-in">
          {filledIn(
            groups.flatMap(({ fields }) => fields),
            draft.bike,
          )}
          . What is filled in is not asked again.
        </p>
        <div class="groups">
          {groups.map(({ title, helps, fields }, i) => (
            <Group key={title} title={title} helps={helps} known={filledIn(fields, draft.bike)} open={i === 0}>
              <div class="fields">
                {fields.map((id) => (
                  <FieldRow
                    key={id}
                    path={id}
                    field={BIKE_FIELDS[id]}
                    text={draft.bike[id] ?? ''}
                    error={errorAt(id)}
                    onType={(text) => onType(id, { ...draft, bike: { ...draft.bike, [id]: text } })}
                    onDone={() => onDone(id)}
                  />
                ))}
              </div>
            </Group>
          ))}
          <Amps draft={draft} errorAt={errorAt} onDraft={setDraft} onType={onType} onDone={onDone} />
        </div>

        {draft.profileRead && (
          <p class="notice">
            Stored profile read on {dayInWords(draft.profileRead.on)}. The plan uses these readings.{' '}
            <button
              type="button"
              class="plain"
              onClick={() => {
                const { profileRead: _, ...rest } = draft;
                setDraft(rest);
              }}
            >
              Forget them
            </button>
          </p>
        )}

        {doubts.length > 0 && (
          <div class="notice">
            <b>Is that right?</b>
            <ul>
              {doubts.map((doubt) => (
                <li key={doubt}>{doubt}</li>
              ))}
            </ul>
          </div>
        )}
        <p role="status" class="saved">
          {saved}
          {faults > 0 && judged.size > 0 && ` ${fieldsNeed(faults)}`}
        </p>
        <div class="deeds">
          <button
            type="button"
            onClick={() => download(JSON.stringify(withKept(rig, draft.kept), null, 2), fileNameOf(rig))}
          >
            Save as a file
          </button>
          <button type="button" onClick={() => replace(EMPTY_DRAFT, 'The form is empty.')}>
            Empty the form
          </button>
        </div>
      </fieldset>
    </form>
  );
}

const fieldsNeed = (count: number) =>
  count === 1
    ? 'One field needs another look. Until then it counts as not known.'
    : `${count} fields need another look. Until then they count as not known.`;

function Start({
  onExample,
  onFile,
}: {
  onExample: (name: string, draft: Draft) => void;
  onFile: (input: HTMLInputElement) => void;
}) {
  return (
    <details class="start-from">
      <summary>Start from an example or a file</summary>
      <p class="hint">Made-up bikes. Take the one that is nearest to yours, then change what differs.</p>
      {Object.entries(EXAMPLE_RIGS).map(([id, rig]) => (
        <button key={id} type="button" onClick={() => onExample(rig.name, draftOf(rig))}>
          {rig.name}
        </button>
      ))}
      <label class="field file">
        Open a file that was saved here
        <input type="file" accept=".json,application/json" onChange={(event) => onFile(event.currentTarget)} />
      </label>
    </details>
  );
}

function Happened({ says, problems, before, onPutBack }: Replaced & { onPutBack: (before: Draft) => void }) {
  return (
    <div class="notice">
      <p>{says}</p>
      {problems.length > 0 && (
        <>
          <p>This could not be used:</p>
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </>
      )}
      {before && (
        <button type="button" onClick={() => onPutBack(before)}>
          Put back what was there
        </button>
      )}
    </div>
  );
}
