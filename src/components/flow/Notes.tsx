import { useState } from 'preact/hooks';
import { noted } from '../../case/change.ts';
import type { Case } from '../../case/events.ts';
import { MOST_NOTE_CHARS } from '../../case/limits.ts';

interface Props {
  readonly case: Case;
  readonly notes: readonly string[];
  /** Gives whether the note was taken. */
  readonly onNote: (next: Case) => boolean;
}

/** Free notes of a case: a volume step, a wire colour, a name to call back. They travel with the link. */
export function Notes({ case: it, notes, onNote }: Props) {
  const [text, setText] = useState('');
  const add = (event: Event) => {
    event.preventDefault();
    if (text.trim() === '') return;
    if (onNote(noted(it, text.trim().slice(0, MOST_NOTE_CHARS)))) setText('');
  };
  return (
    <details class="notes">
      <summary>Notes{notes.length > 0 && ` (${notes.length})`}</summary>
      <ul>
        {notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <form onSubmit={add}>
        <label for="note">Write something down. It travels with the case.</label>
        <textarea
          id="note"
          rows={3}
          maxLength={MOST_NOTE_CHARS}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <button type="submit">Keep the note</button>
      </form>
    </details>
  );
}
