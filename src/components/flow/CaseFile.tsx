import { useState } from 'preact/hooks';
import { download } from '../../browser/download.ts';
import type { Case } from '../../case/events.ts';
import { fileName, fromFile, toFile } from '../../case/file.ts';

interface Props {
  readonly case: Case;
  /** Whether there is anything in the case that is worth a file. */
  readonly canSave: boolean;
}

/** The case as a file, and one from a file in its place: what was open here is kept aside, as with a link. */
export function CaseFile({ case: it, canSave }: Props) {
  const [told, setTold] = useState('');
  const open = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (!file) return;
    const opened = await file
      .text()
      .then(fromFile, () => ({ ok: false, message: 'This file cannot be read.' }) as const);
    // The same file may be opened once more.
    input.value = '';
    if (opened.ok) location.hash = opened.fragment;
    else setTold(opened.message);
  };
  return (
    <details>
      <summary>Case as a file</summary>
      {canSave && (
        <button type="button" class="plain" onClick={() => download(toFile(it), fileName(it))}>
          Save this case as a file
        </button>
      )}
      <label class="case-file">
        Open a case from a file
        <input type="file" accept=".json,application/json" onChange={(event) => open(event.currentTarget)} />
      </label>
      <p role="status" class="hint">
        {told}
      </p>
    </details>
  );
}
