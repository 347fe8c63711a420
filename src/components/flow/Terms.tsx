import { Fragment } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { fetchedOnce } from '../../browser/fetched-once.ts';
import { type Piece, type Term, termFinder } from '../../search/terms.ts';

type Find = (text: string) => readonly Piece[];

/** The words are never waited for: without them a text is as it is. */
let found: Find | undefined;
const fetchWords = fetchedOnce((terms: readonly Term[]): Find => {
  const find = termFinder(terms);
  found = (text) => find(text);
  return found;
});

interface Props {
  readonly text: string;
  /** The address of the site's root. */
  readonly root: string;
}

/** A text in which the words of the glossary open their entry. */
export function Terms({ text, root }: Props) {
  const [find, setFind] = useState<{ readonly in: Find } | undefined>(found && { in: found });
  useEffect(() => {
    if (!find)
      fetchWords(`${root}terms.json`).then(
        (words) => setFind({ in: words }),
        () => undefined,
      );
  }, []);
  if (!find) return <>{text}</>;
  return (
    <>
      {find.in(text).map((piece, i) =>
        typeof piece === 'string' ? (
          <Fragment key={i}>{piece}</Fragment>
        ) : (
          <a key={i} class="term" href={`${root}words/#${piece.slug}`}>
            {piece.text}
          </a>
        ),
      )}
    </>
  );
}
