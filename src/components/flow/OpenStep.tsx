import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Seat } from '../../browser/seat.ts';
import { ANSWER_KEYS, useAnswerKeys } from '../../browser/use-answer-keys.ts';
import { upperFirst } from '../../compute/first-letter.ts';
import { offered } from '../../steps/outcome.ts';
import type { Answer, Situation, Step } from '../../steps/step.ts';
import { inWords, TOOL_NAMES } from '../../steps/step.ts';
import { CannotAnswer } from './CannotAnswer.tsx';
import { minutesInWords } from './minutes.ts';
import type { Ready } from './ready.ts';
import { Say } from './Say.tsx';
import type { Parts } from './use-parts.ts';
import { useRested } from './use-rested.ts';

interface Props {
  readonly step: Step;
  readonly situation: Situation;
  /** What has to be done before it. */
  readonly ready: Ready;
  readonly seat: Seat;
  /** The answer that is being changed, or one that could not be used. */
  readonly was: Answer | undefined;
  /** What was read the last time that this step was asked, when it is asked again. */
  readonly lastTime: Readonly<Record<string, string>> | undefined;
  /** What was typed in it and not sent, by field. */
  readonly draft: Readonly<Record<string, string>>;
  readonly notes: readonly string[];
  readonly parts: Parts | undefined;
  readonly disabled: boolean;
  /** Whether another question stood here a moment ago: the second tap of a double tap was meant for that one. */
  readonly justCame: boolean;
  /** Why it is asked once more, where it was answered and the answer is in doubt. */
  readonly doubt: string | undefined;
  /** What it can tell apart now. */
  readonly whyNow: () => string | undefined;
  /** What each outcome would mean, for whoever learns. */
  readonly meanings?: ComponentChildren;
  /** The address of the site's root. */
  readonly root: string;
  readonly onDraft: (texts: Readonly<Record<string, string>>) => void;
  /** A note may go with an answer. */
  readonly onAnswer: (answer: Answer, note?: string) => void;
}

interface WhyProps extends Pick<Props, 'step' | 'whyNow' | 'meanings' | 'parts' | 'root'> {
  readonly withTerms: (text: string) => ComponentChildren;
}

/** A double tap is over after this. */
const DOUBLE_TAP_MS = 400;

/** For a moment after another question stood here, taps are not for this one. */
function useSettling(justCame: boolean): boolean {
  const [settling, setSettling] = useState(justCame);
  useEffect(() => {
    const timer = setTimeout(() => setSettling(false), DOUBLE_TAP_MS);
    return () => clearTimeout(timer);
  }, []);
  return settling;
}

/** Why it is asked. */
function Why({ step, whyNow, meanings, parts, root, withTerms }: WhyProps) {
  const now = whyNow();
  return (
    <>
      {now && <p>{withTerms(now)}</p>}
      <p>{withTerms(step.why)}</p>
      {step.kind === 'reading' && <p class="seat-only-learning">Expected: {step.formula}.</p>}
      {meanings}
      {parts && (
        <p>
          <a href={`${root}read/${parts.common.articleOf(step)}/`}>Read more about it</a>
        </p>
      )}
    </>
  );
}

function Answers({ step, situation, seat, was, lastTime, parts, ...rest }: Props) {
  if (step.kind === 'reading') {
    if (!parts) return null;
    const typed = was && 'readings' in was ? was.readings : undefined;
    return (
      <parts.common.Measuring
        {...rest}
        key={step.id}
        step={step}
        situation={situation}
        seat={seat}
        typed={typed ?? lastTime ?? {}}
        fromLastTime={typed === undefined && lastTime !== undefined}
        showBandsAtOnce={seat === 'learning'}
      />
    );
  }
  const options = (
    <ul class="options">
      {offered(step, situation).map(([option, label], i) => (
        <li key={option}>
          <button
            type="button"
            class="answer"
            disabled={rest.disabled}
            aria-pressed={was && 'option' in was && was.option === option ? 'true' : undefined}
            onClick={() => rest.onAnswer({ option })}
          >
            {label}
            <span class="key seat-only-phone" aria-hidden="true">
              {ANSWER_KEYS[i]}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
  const tones = step.kind === 'choice' ? step.tones : undefined;
  if (!tones || !parts) return options;
  return (
    <>
      <parts.common.ToneOf names={tones} folder={`${rest.root}tones/`} folded={seat === 'phone'} />
      {options}
    </>
  );
}

/** What a question without an answer is left with: it is not known, not done, or not done a second time. */
const leaveLabel = (quick: boolean, doubted: boolean): string => {
  if (doubted) return 'I can’t take it again';
  return quick ? 'I don’t know' : 'I can’t do this';
};

/** One question: what to do, how, with what care, and the ways to answer. A question of a moment shows its answers first. */
export function OpenStep(props: Props) {
  const { step, situation, ready, seat, was, draft, parts, disabled, justCame, doubt, root, onAnswer } = props;
  // What is not needed for an answer is drawn once the question itself is.
  const rested = useRested(!justCame);
  const [leaving, setLeaving] = useState(false);
  const [isDone, setDone] = useState(false);
  // Where something was typed already, what comes before it is done.
  const begun = isDone || was !== undefined || Object.keys(draft).length > 0;
  const isFirst = parts?.common.isPreparedFirst(step, ready, seat) ?? false;
  const preparing = isFirst && !begun;
  const heading = useRef<HTMLHeadingElement>(null);
  const settling = useSettling(justCame);
  const leaveButton = useRef<HTMLButtonElement>(null);
  const hasLeft = useRef(false);
  useEffect(() => {
    // Back at the question, the keyboard goes on from where it left.
    if (!leaving && hasLeft.current) leaveButton.current?.focus();
    hasLeft.current = leaving;
  }, [leaving]);
  const quick = step.minutes < 1;
  const byKey = step.kind !== 'reading';
  const goOnPrepared = () => {
    setDone(true);
    heading.current?.focus();
  };
  const goOnWithout = () => onAnswer({ cannot: true });
  const leave = () => (step.ifCannot && doubt === undefined && !leaving ? setLeaving(true) : goOnWithout());
  useAnswerKeys(seat === 'phone' && !disabled && !settling && byKey, (n) => {
    const [option] = offered(step, situation)[n - 1] ?? [];
    if (n === 0) leave();
    else if (option !== undefined) onAnswer({ option });
  });
  const withTerms = (text: string) => (parts ? <parts.common.Terms key={text} text={text} root={root} /> : text);
  const how = () => {
    const lines = typeof step.how === 'function' ? step.how(situation) : step.how;
    // Where nothing is done the lines are no steps: none comes before another.
    const List = step.observes.length === 0 ? 'ul' : 'ol';
    return quick ? (
      <p class="hint">{withTerms(lines.join(' '))}</p>
    ) : (
      <List class="how">
        {lines.map((line) => (
          <li key={line}>{withTerms(line)}</li>
        ))}
      </List>
    );
  };
  return (
    <>
      {doubt !== undefined && (
        <p class="notice" id="doubt">
          {doubt}
        </p>
      )}
      {/* Whoever is on the phone reads it first; nobody else sees it. */}
      {(rested || seat === 'phone') && <Say step={step} situation={situation} ready={ready} doubt={doubt} />}
      <h1 tabIndex={-1} ref={heading} aria-describedby={doubt === undefined ? undefined : 'doubt'}>
        {inWords(step.ask, situation)}
      </h1>
      {!quick && <p class="hint">{upperFirst(`${minutesInWords(step.minutes)}, with ${TOOL_NAMES[step.tool]}.`)}</p>}
      <div class={quick ? undefined : 'side-by-side'}>
        <div>
          {parts && <parts.common.Before ready={ready} isDone={isFirst && begun} />}
          {!quick && !preparing && how()}
        </div>
        <div class="answers" inert={settling}>
          {preparing ? (
            <button type="button" class="go" onClick={goOnPrepared}>
              All of this is done
            </button>
          ) : (
            <Answers {...props} />
          )}
          {leaving && step.ifCannot ? (
            <CannotAnswer instead={step.ifCannot} byKey={byKey} onGoOn={goOnWithout} onBack={() => setLeaving(false)} />
          ) : (
            <button
              type="button"
              class="plain"
              ref={leaveButton}
              disabled={disabled}
              aria-pressed={was && 'cannot' in was ? 'true' : undefined}
              onClick={leave}
            >
              {leaveLabel(quick, doubt !== undefined)}
              {byKey && (
                <span class="key seat-only-phone" aria-hidden="true">
                  0
                </span>
              )}
            </button>
          )}
        </div>
      </div>
      {quick && how()}
      <details class="why" key={`${step.id}-${seat}`} open={seat === 'learning'}>
        <summary>Why this question?</summary>
        {rested && <Why {...props} withTerms={withTerms} />}
      </details>
    </>
  );
}
