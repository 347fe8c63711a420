import type { Certainty } from '../../inference/certainty.ts';

export const CERTAINTY_WORDS = { proved: 'Proved', likely: 'Likely', 'short list': 'Not proved yet' } as const;

/** A ring that fills up: open, half, whole with a tick. Whoever sees no colour sees the shape. */
const SHAPES = {
  proved: (
    <>
      <circle cx="12" cy="12" r="10" class="filled" />
      <path d="M7 12l4 4 7-8" class="tick" />
    </>
  ),
  likely: (
    <>
      <circle cx="12" cy="12" r="9" class="ring" />
      <path d="M12 3a9 9 0 0 0 0 18z" class="filled" />
    </>
  ),
  'short list': <circle cx="12" cy="12" r="9" class="ring" />,
} as const;

interface Props {
  readonly certainty: Certainty;
  /** What that rests on, in a sentence or two. */
  readonly because: string;
}

/** How sure a verdict is, in a word and a shape, and what that rests on. */
export function HowSure({ certainty, because }: Props) {
  return (
    <p class="how-sure">
      <svg viewBox="0 0 24 24" aria-hidden="true">
        {SHAPES[certainty]}
      </svg>
      <span>
        <b>{CERTAINTY_WORDS[certainty]}.</b> {because}
      </span>
    </p>
  );
}
