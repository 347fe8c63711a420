import type { Seat } from '../../browser/seat.ts';
import { CAUTIONS } from '../../steps/cautions.ts';
import { offered } from '../../steps/outcome.ts';
import type { Answer, Situation, Step } from '../../steps/step.ts';
import { TOOL_NAMES } from '../../steps/step.ts';
import { minutesInWords } from './minutes.ts';
import { PathDrawing } from './PathDrawing.tsx';
import { ReadingForm } from './ReadingForm.tsx';
import { Tones } from './Tones.tsx';

interface Props {
  readonly step: Step;
  readonly situation: Situation;
  readonly seat: Seat;
  /** The answer that is being changed, or one that could not be used. */
  readonly was: Answer | undefined;
  readonly disabled: boolean;
  /** The address of the site's root. */
  readonly root: string;
  readonly onAnswer: (answer: Answer) => void;
}

function Answers({ step, situation, seat, was, disabled, onAnswer }: Omit<Props, 'root'>) {
  if (step.kind === 'reading') {
    const typed = was && 'readings' in was ? was.readings : {};
    return (
      <ReadingForm
        key={step.id}
        step={step}
        situation={situation}
        typed={typed}
        showBandsAtOnce={seat === 'learning'}
        disabled={disabled}
        onAnswer={onAnswer}
      />
    );
  }
  return (
    <ul class="options">
      {offered(step, situation).map(([option, label], i) => (
        <li key={option}>
          <button
            type="button"
            class="answer"
            disabled={disabled}
            aria-pressed={was && 'option' in was && was.option === option ? 'true' : undefined}
            onClick={() => onAnswer({ option })}
          >
            {label}
            <span class="key seat-only-phone" aria-hidden="true">
              {i + 1}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}

/** One question: what to do, how, with what care, and the ways to answer. A question of a moment shows its answers first. */
export function OpenStep(props: Props) {
  const { step, situation, seat, disabled, root, onAnswer } = props;
  const lines = typeof step.how === 'function' ? step.how(situation) : step.how;
  const probes =
    step.kind === 'reading' ? (typeof step.probes === 'function' ? step.probes(situation) : step.probes) : undefined;
  const quick = step.minutes < 1;
  const how = quick ? (
    <p class="hint">{lines.join(' ')}</p>
  ) : (
    <ol class="how">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ol>
  );
  return (
    <>
      <p class="say seat-only-phone">
        <span class="hint">Say: </span>
        {step.phone}
      </p>
      <h1 tabIndex={-1}>{step.ask}</h1>
      {!quick && (
        <p class="hint">
          Takes {minutesInWords(step.minutes)}, with {TOOL_NAMES[step.tool]}.
        </p>
      )}
      {step.cautions?.map((id) => (
        <p key={id} class="caution">
          {CAUTIONS[id]}
        </p>
      ))}
      {!quick && how}
      {probes && <PathDrawing rig={situation.rig} probes={probes} />}
      {step.kind === 'reading' && step.tones && <Tones names={step.tones} folder={`${root}tones/`} />}
      <Answers {...props} />
      <button
        type="button"
        class="plain"
        disabled={disabled}
        aria-pressed={props.was && 'cannot' in props.was ? 'true' : undefined}
        onClick={() => onAnswer({ cannot: true })}
      >
        {quick ? 'I don’t know' : 'I can’t do this'}
        {step.kind !== 'reading' && (
          <span class="key seat-only-phone" aria-hidden="true">
            0
          </span>
        )}
      </button>
      {quick && how}
      {step.ifCannot && <p class="hint">If not: {step.ifCannot.charAt(0).toLowerCase() + step.ifCannot.slice(1)}</p>}
      <details class="why" key={`${step.id}-${seat}`} open={seat === 'learning'}>
        <summary>Why this question?</summary>
        <p>{step.why}</p>
        {step.article && (
          <p>
            <a href={`${root}read/${step.article}/`}>Read more about it</a>
          </p>
        )}
      </details>
    </>
  );
}
