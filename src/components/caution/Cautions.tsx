import { CAUTIONS, type CautionId } from '../../steps/cautions.ts';
import { Signed } from './Signed.tsx';
import { byWord } from './signal-words.ts';

/** What to be careful of: each caution once, the gravest first, those of one word together. */
export function Cautions({ ids }: { readonly ids: readonly CautionId[] }) {
  return (
    <>
      {byWord(ids).map(([word, own]) => (
        <Signed key={word} word={word} sentences={own.map((id) => CAUTIONS[id])} />
      ))}
    </>
  );
}
