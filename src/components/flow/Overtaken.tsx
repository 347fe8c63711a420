import { useEffect, useRef } from 'preact/hooks';

interface Props {
  /** Changes each time that something was not kept. */
  readonly times: number;
  readonly onTake: () => void;
  readonly onKeep: () => void;
}

/** Another tab has gone on with the case. Nothing is kept here until it is said which of the two counts. */
export function Overtaken({ times, onTake, onKeep }: Props) {
  const notice = useRef<HTMLElement>(null);
  useEffect(() => notice.current?.focus(), [times]);
  return (
    <section class="notice" ref={notice} tabIndex={-1} aria-label="The case went on in another tab">
      <p>This case went on in another tab. Nothing you answer here is kept until you choose.</p>
      <button type="button" class="go" onClick={onTake}>
        Take the newer case
      </button>
      <button type="button" onClick={onKeep}>
        Go on with this one, and keep the newer aside
      </button>
    </section>
  );
}
