import type { ComponentChildren } from 'preact';
import { SayEnd } from '../flow/SayEnd.tsx';
import { tellOnward } from './say-verdict.ts';

interface Props {
  readonly title: string;
  readonly because: string;
  /** Where it begins if it is no fault at all. */
  readonly goesOn: ComponentChildren;
  readonly onGo: () => void;
  readonly onNotIt: () => void;
}

/** The way to the flow that takes this case on. */
export function OnwardView({ title, because, goesOn, onGo, onNotIt }: Props) {
  return (
    <article class="verdict">
      <h1 tabIndex={-1}>{title}</h1>
      <SayEnd {...tellOnward(title, because)} />
      <p>{because} All that you have answered goes with it.</p>
      <button type="button" class="go" onClick={onGo}>
        Go on with “{title}”
      </button>
      <button type="button" class="plain" onClick={onNotIt}>
        It is not that, go on here
      </button>
      {goesOn}
    </article>
  );
}
