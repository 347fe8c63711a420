import type { SignalWord } from './signal-words.ts';

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
