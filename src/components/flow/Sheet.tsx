import { useState } from 'preact/hooks';

/** A heading and its lines, as they stand on paper or in a message. */
export interface Section {
  readonly title: string;
  readonly lines: readonly string[];
  readonly numbered?: true;
}

interface Props {
  readonly title: string;
  readonly sections: readonly Section[];
}

const filled = (sections: readonly Section[]) => sections.filter(({ lines }) => lines.length > 0);

/** All of it as plain text, for a ticket or a message. */
export const asText = ({ title, sections }: Props): string =>
  [
    title,
    ...filled(sections).map(({ title: heading, lines, numbered }) =>
      [heading.toUpperCase(), ...lines.map((line, i) => `${numbered ? `${i + 1}.` : '-'} ${line}`)].join('\n'),
    ),
  ]
    .join('\n\n')
    .replaceAll('\u00A0', ' ');

/** So many letters fill a sheet in its usual size; with more, they are set smaller. */
const USUAL_CHARS = 4200;

/** What is taken along: the verdict as text, and the one sheet that is printed in place of the page. */
export function Sheet(props: Props) {
  const [told, setTold] = useState('');
  const [text, setText] = useState<string>();
  const copy = async () => {
    const all = asText(props);
    try {
      await navigator.clipboard.writeText(all);
      setTold('Copied. Paste it into a message or a ticket.');
    } catch {
      setTold('Mark the text below and copy it.');
      setText(all);
    }
  };
  const isLong = asText(props).length > USUAL_CHARS;
  return (
    <>
      <h2>Take it along</h2>
      <div class="take-along">
        <button type="button" onClick={copy}>
          Copy it as text
        </button>
        <button type="button" onClick={() => print()}>
          Print it on one page
        </button>
      </div>
      <p role="status" class="hint">
        {told}
      </p>
      {text !== undefined && (
        <textarea
          class="as-text"
          aria-label="The verdict as text"
          rows={12}
          readOnly
          value={text}
          onFocus={(event) => event.currentTarget.select()}
        />
      )}
      <div class={isLong ? 'sheet long' : 'sheet'}>
        <p class="sheet-title">{props.title}</p>
        {filled(props.sections).map(({ title, lines, numbered }) => {
          const List = numbered ? 'ol' : 'ul';
          return (
            <section key={title}>
              <p class="sheet-heading">{title}</p>
              <List>
                {lines.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </List>
            </section>
          );
        })}
      </div>
    </>
  );
}
