import { currentSeat } from '../../browser/seat.ts';
import type { SpokenEnd } from '../fault/say-verdict.ts';
import { useRested } from './use-rested.ts';

function Part({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <p class="hint">{title}</p>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}

/** How a verdict is told to a caller: what it is, what to mind, what it takes, and only then what he does. */
export function SayEnd({ tell, mind, bring, fix }: SpokenEnd) {
  const rested = useRested();
  // Whoever is on the phone reads it first; nobody else sees it.
  if (!rested && currentSeat() !== 'phone') return null;
  return (
    <div class="say seat-only-phone">
      <Part title="Tell the caller, one line at a time:" lines={tell} />
      <Part title="What he has to mind:" lines={mind} />
      <Part title="To bring:" lines={bring} />
      <Part title="What he does, one line at a time:" lines={fix} />
    </div>
  );
}
