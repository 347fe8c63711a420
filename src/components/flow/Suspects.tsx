import { useState } from 'preact/hooks';
import type { Flow } from '../../../machines/kit.ts';
import { ahead } from '../../case/ahead.ts';
import type { Standing } from '../../case/replay.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import { type Step, TOOL_NAMES } from '../../steps/step.ts';
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

/** What spoke against a suspect, as it stands on the wire: the step and what was answered. */
const spoke = ({ steps }: Flow, { findings }: Standing, against: readonly string[]): string =>
  against
    .flatMap((id) => {
      const [step, outcome] = [steps.get(id), outcomeNamed(findings, id)];
      return step && outcome !== undefined ? [`${step.short}: ${step.outcomes[outcome] ?? outcome}`] : [];
    })
    .join('; ');

interface StripProps extends Props {
  /** The answer that the page asks to check again. */
  readonly doubted: Step | undefined;
}

/** The strip at the foot of the page: how many are still possible, opened on wish to what speaks against the rest. */
export function SuspectStrip({ flow, standing, suspects, doubted }: StripProps) {
  const ranked = oneEach(rank(suspects, standing.findings));
  const possible = stillPossible(ranked);
  const out = ranked.filter(({ against }) => against.length > 0);
  // Beside the wire there is room for it, once it says more than the catalogue does.
  const [beside] = useState(() => matchMedia('(min-width: 62em)').matches);
  return (
    <details class="strip" open={beside && standing.terminals.length > 0}>
      <summary>
        Still possible: <b>{possible.length}</b>
      </summary>
      {possible.length === 0 && (
        <p>
          No single cause in this list shows all of this.{' '}
          {doubted
            ? `Check “${doubted.short}” first, as asked above.`
            : 'It is one that is not in it, or two at once. Go on: the readings find them, one after the other.'}
        </p>
      )}
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
            <s>{suspect.title}</s>
            <br />
            <span class="hint">{spoke(flow, standing, against)}</span>
          </li>
        ))}
      </ul>
      <p class="hint">The odds are estimates of the trade. They rank; they prove nothing.</p>
    </details>
  );
}

interface NextProps {
  readonly standing: Standing;
  readonly suspects: readonly Suspect[];
  /** The verdicts whose fix was done and did not cure it. */
  readonly tried: readonly string[];
}

/** Who else it can be when a repair did not help: the rest in the order of their odds, contradicted ones last. */
export function NextLikeliest({ standing, suspects, tried }: NextProps) {
  const rest = oneEach(rank(suspects, standing.findings)).filter(({ suspect }) => !tried.includes(suspect.verdict));
  return (
    <>
      <p>The repair is good? Then look at these, in this order:</p>
      <ol>
        {rest.slice(0, 3).map(({ suspect }) => (
          <li key={suspect.verdict}>
            <b>{suspect.title}.</b> {suspect.split}
          </li>
        ))}
      </ol>
    </>
  );
}
