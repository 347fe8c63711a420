import { CAUTIONS, type CautionId } from '../../steps/cautions.ts';
import { byWord, type SignalWord } from './signal-words.ts';

interface Props {
  readonly word: SignalWord;
  readonly sentences: readonly string[];
}

/** Sentences of care under their signal word, framed as on a safety sign. All but a notice carry the triangle. */
export function Signed({ word, sentences }: Props) {
  return (
    <div class={`caution word-${word.toLowerCase()}`}>
      <b class="signal">{word}</b>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}

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
