import type { Moved } from '../../inference/evidence.ts';
import { CAUTIONS } from '../../steps/cautions.ts';
import { inWords, type Step } from '../../steps/step.ts';
import { isUnfused } from '../../steps/supply/unfused.ts';
import { Answers, strongest } from './Evidence.tsx';
import { measuredFirst } from './list-sections.ts';
import type { FaultView } from './view.ts';

const MOST_FOUND = 8;

/** What was found out so far, whichever of the causes in question it moved most. */
function found(view: FaultView, causes: readonly string[]): readonly Pick<Moved, 'step'>[] {
  // What is dangerous is told whatever it says of the causes.
  const dangers = view.standing.terminals.flatMap(({ step, answer }) =>
    isUnfused({ [step.id]: answer }) ? [{ step: step.id }] : [],
  );
  const byStep = new Map(
    causes
      .flatMap((cause) => strongest(view, cause, MOST_FOUND))
      .toSorted((a, b) => Math.abs(a.bits) - Math.abs(b.bits))
      .map((moved) => [moved.step, moved]),
  );
  const rest = [...byStep.values()].filter(({ step }) => !dangers.some((danger) => danger.step === step));
  return [...dangers, ...rest.toReversed().slice(0, MOST_FOUND)];
}

interface Props {
  readonly view: FaultView;
  readonly causes: readonly string[];
  readonly title: string;
  readonly onReopen: (step: Step) => void;
}

/** What somebody with a meter has to be told: what was found so far, and what to measure first. */
export function ForTheWorkshop({ view, causes, title, onReopen }: Props) {
  const { standing } = view;
  const answers = found(view, causes);
  const first = measuredFirst(view);
  return (
    <section class="workshop">
      <h2>{title}</h2>
      {isUnfused(standing.facts) && (
        <p>
          Before anything else: the amplifier’s lead has no fuse at the battery. It gets one, or comes off.{' '}
          {CAUTIONS['no-fuse']}
        </p>
      )}
      {answers.length > 0 && (
        <>
          <p>Found so far:</p>
          <Answers view={view} answers={answers} onReopen={onReopen} />
        </>
      )}
      {first.length > 0 && (
        <>
          <p>To be measured first:</p>
          <ol>
            {first.map((step) => (
              <li key={step.id}>{inWords(step.ask, standing)}</li>
            ))}
          </ol>
        </>
      )}
    </section>
  );
}
