import type { Moved } from '../../inference/evidence.ts';
import { inWords, type Step } from '../../steps/step.ts';
import { withUnit } from '../flow/with-unit.ts';
import { knownOf } from './known-of.ts';
import type { FaultView } from './view.ts';

/** An answer that moved the odds by less than a quarter of a bit said next to nothing. */
const LEAST_BITS = 0.25;
/** What is told of the past and said of the build, “nothing known” among it, has to weigh more before it is worth a line. */
const LEAST_BITS_TOLD = 1;
const MOST_SHOWN = 5;

const leastBits = (flow: FaultView['flow'], step: string): number =>
  flow.told.has(step) || flow.steps.get(step)?.kind === 'rig' ? LEAST_BITS_TOLD : LEAST_BITS;

/** The answers that moved a cause most, for it and against it. */
export function strongest(
  { flow, moved }: Pick<FaultView, 'flow' | 'moved'>,
  cause: string,
  most = MOST_SHOWN,
): readonly Moved[] {
  return moved(cause)
    .filter(({ step, bits }) => Math.abs(bits) >= leastBits(flow, step))
    .slice(0, most);
}

interface Props {
  readonly view: FaultView;
  readonly answers: readonly Pick<Moved, 'step'>[];
  readonly onReopen: (step: Step) => void;
}

/** Answers as they were given, each a way back to its question. */
export function Answers({ view, answers, onReopen }: Props) {
  const { flow, standing } = view;
  return (
    <ul class="evidence">
      {answers.map(({ step: id }) => {
        const step = flow.steps.get(id);
        return (
          step && (
            <li key={id}>
              <a
                href={`#terminal-${id}`}
                onClick={(event) => {
                  event.preventDefault();
                  onReopen(step);
                }}
              >
                {inWords(step.short, standing)}
              </a>
              : {withUnit(knownOf(step, standing))}
            </li>
          )
        );
      })}
    </ul>
  );
}

/** How a cause is known: what speaks for it, and what against. */
export function Evidence({ view, cause, onReopen }: Omit<Props, 'answers'> & { readonly cause: string }) {
  const answers = strongest(view, cause);
  const [speaksFor, against] = [answers.filter(({ bits }) => bits > 0), answers.filter(({ bits }) => bits < 0)];
  return (
    <>
      {speaksFor.length > 0 && (
        <>
          <h2>How we know</h2>
          <Answers view={view} answers={speaksFor} onReopen={onReopen} />
        </>
      )}
      {against.length > 0 && (
        <>
          <h2>What speaks against it</h2>
          <Answers view={view} answers={against} onReopen={onReopen} />
        </>
      )}
    </>
  );
}
