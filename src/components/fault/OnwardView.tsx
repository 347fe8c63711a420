import type { HandsOver } from '../../../machines/machine.ts';
import { SayEnd } from '../flow/SayEnd.tsx';
import { tellOnward } from './say-verdict.ts';

interface Props {
  readonly to: HandsOver;
  readonly onGo: () => void;
  readonly onNotIt: () => void;
}

/** The way to the flow that takes this case on. */
export function OnwardView({ to, onGo, onNotIt }: Props) {
  return (
    <article class="verdict">
      <h1 tabIndex={-1}>{to.title}</h1>
      <SayEnd {...tellOnward(to)} />
      <p>{to.because} All that you have answered goes with it.</p>
      <button type="button" class="go" onClick={onGo}>
        Go on with “{to.title}”
      </button>
      <button type="button" class="plain" onClick={onNotIt}>
        It is not that, go on here
      </button>
    </article>
  );
}
