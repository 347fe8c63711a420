import { meaningsOf } from '../../inference/meaning.ts';
import type { Step } from '../../steps/step.ts';
import { shareInWords } from './shares.ts';
import type { FaultView } from './view.ts';

/** What hardly anybody would be told here is not worth a line. */
const LEAST_CHANCE = 0.005;

/** For whoever learns: what each outcome of the open question would do to the causes. */
export function Meanings({ view, step }: { readonly view: FaultView; readonly step: Step }) {
  const { model, believed, nameOf } = view;
  const meanings = meaningsOf(model, believed, step.id).filter(
    ({ outcome, chance }) => chance >= LEAST_CHANCE && outcome in step.outcomes,
  );
  if (meanings.length === 0) return null;
  return (
    <div class="seat-only-learning">
      <h2>What each outcome would mean</h2>
      <ul>
        {meanings.map(({ outcome, chance, raises }) => (
          <li key={outcome}>
            <b>{step.outcomes[outcome]}</b> ({shareInWords(chance)}):{' '}
            {raises
              ? `“${nameOf(raises.cause)}” goes from ${shareInWords(raises.from)} to ${shareInWords(raises.to)}.`
              : 'it moves nothing by much.'}
          </li>
        ))}
      </ul>
    </div>
  );
}
