import type { ComponentChildren } from 'preact';

interface Props {
  readonly title: string;
  /** What it helps to fill this in. */
  readonly helps: string;
  /** How much of it is known, in a few words. */
  readonly known: string;
  readonly open?: boolean;
  readonly children: ComponentChildren;
}

/** A part of the form that folds away: a phone shows the whole bike at a glance. */
export function Group({ title, helps, known, open = false, children }: Props) {
  return (
    <details class="group" open={open}>
      <summary>
        <h2>{title}</h2>
        <span class="hint">{known}</span>
      </summary>
      <p class="helps">{helps}</p>
      {children}
    </details>
  );
}
