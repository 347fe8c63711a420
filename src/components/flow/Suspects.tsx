import type { Flow } from '../../../machines/kit.ts';
import { ahead } from '../../case/ahead.ts';
import type { Standing } from '../../case/replay.ts';
import { TOOL_NAMES } from '../../steps/step.ts';
import { oneEach, rank, type Suspect, shareInWords, stillPossible } from '../../verdicts/suspects.ts';
import { minutesInWords } from './minutes.ts';

interface Props {
  readonly flow: Flow;
  readonly standing: Standing;
  readonly suspects: readonly Suspect[];
}

/** The ranked answer so far, and what a proof of the likeliest would take. */
export function RankedSoFar({ flow, standing, suspects }: Props) {
  const possible = oneEach(stillPossible(rank(suspects, standing.findings)));
  const [first] = possible;
  if (!first) return null;
  const { minutes, tools } = ahead(flow, standing, first.suspect);
  return (
    <section class="notice" aria-label="The answer so far">
      <h2>Likeliest so far</h2>
      <ol>
        {possible.slice(0, 3).map(({ suspect, shareRatio }) => (
          <li key={suspect.verdict}>
            <b>{suspect.title}</b>: {shareInWords(shareRatio)}
          </li>
        ))}
      </ol>
      <p>
        Proof of the first takes {minutesInWords(minutes)}, with{' '}
        {tools
          .filter((tool) => tool !== 'none')
          .map((tool) => TOOL_NAMES[tool])
          .join(' and ') || 'no tool'}
        .
      </p>
    </section>
  );
}

/** The strip at the foot of the page: how many are still possible, opened on wish to what speaks against the rest. */
export function SuspectStrip({ flow, standing, suspects }: Props) {
  const ranked = oneEach(rank(suspects, standing.findings));
  const possible = stillPossible(ranked);
  const out = ranked.filter(({ against }) => against.length > 0);
  return (
    <details class="strip">
      <summary>
        Still possible: <b>{possible.length}</b>
      </summary>
      <ul class="suspects">
        {possible.map(({ suspect, shareRatio }) => (
          <li key={suspect.verdict}>
            {suspect.title} <span class="hint">{shareInWords(shareRatio)}</span>
          </li>
        ))}
      </ul>
      {out.length > 0 && <p class="hint">Ruled out, and what spoke against it:</p>}
      <ul class="suspects">
        {out.map(({ suspect, against }) => (
          <li key={suspect.verdict}>
            <s>{suspect.title}</s>{' '}
            <span class="hint">{against.map((id) => flow.steps.get(id)?.short ?? id).join(', ')}</span>
          </li>
        ))}
      </ul>
      <p class="hint">The odds are estimates of the trade. They rank; they prove nothing.</p>
    </details>
  );
}
