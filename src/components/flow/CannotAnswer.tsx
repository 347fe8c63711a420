import { useEffect, useRef } from 'preact/hooks';

interface Props {
  /** What to do instead, or what is taken without an answer. */
  readonly instead: string;
  /** The key that confirms, for those who answer by keys. */
  readonly byKey: boolean;
  readonly onGoOn: () => void;
  readonly onBack: () => void;
}

/** Before a question is left without an answer: what happens then, and the way back to it. */
export function CannotAnswer({ instead, byKey, onGoOn, onBack }: Props) {
  const goOn = useRef<HTMLButtonElement>(null);
  useEffect(() => goOn.current?.focus(), []);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape only repeats the second button
    <div class="notice" onKeyDown={(event) => event.key === 'Escape' && onBack()}>
      <p id="instead">{instead}</p>
      <button type="button" class="answer-without" ref={goOn} aria-describedby="instead" onClick={onGoOn}>
        Go on without it
        {byKey && (
          <span class="key seat-only-phone" aria-hidden="true">
            0
          </span>
        )}
      </button>
      <button type="button" class="plain" onClick={onBack}>
        Back to the question
      </button>
    </div>
  );
}
