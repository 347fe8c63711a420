import { Fragment } from 'preact';
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

/** Those of them that can be said to speak for it or against it, or that it does not explain. */
export const speaking = (view: Pick<FaultView, 'flow' | 'moved'>, cause: string, most = MOST_SHOWN): readonly Moved[] =>
  strongest(view, cause, Infinity)
    .filter(({ speaks }) => speaks !== undefined)
    .slice(0, most);

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

/** How a cause is known: what speaks for it, what against, and what it leaves unexplained. */
export function Evidence({ view, cause, onReopen }: Omit<Props, 'answers'> & { readonly cause: string }) {
  const answers = speaking(view, cause);
  const of = (speaks: Moved['speaks']) => answers.filter((one) => one.speaks === speaks);
  const sections = [
    ['How we know', of('for')],
    ['What speaks against it', of('against')],
    ['What it does not explain', of('misfit')],
  ] as const;
  return (
    <>
      {sections.map(
        ([title, own]) =>
          own.length > 0 && (
            <Fragment key={title}>
              <h2>{title}</h2>
              <Answers view={view} answers={own} onReopen={onReopen} />
            </Fragment>
          ),
      )}
    </>
  );
}
