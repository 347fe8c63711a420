import type { Terminal } from '../../case/replay.ts';
import type { Step } from '../../steps/step.ts';

/** What was answered on a terminal: the outcome in words, and the readings behind it. */
export function said({ step, answer, outcome }: Terminal): string {
  if ('cannot' in answer) return step.kind === 'rig' || step.minutes < 1 ? 'not known' : 'could not be done';
  const words = step.outcomes[outcome] ?? outcome;
  if (step.kind !== 'reading' || !('readings' in answer)) return words;
  const readings = Object.entries(step.readings).flatMap(([name, { unit }]) => {
    const text = answer.readings[name];
    return text ? [/[a-zΩ]\s*$/i.test(text) ? text : `${text} ${unit}`] : [];
  });
  return `${words} (${readings.join(', ')})`;
}

interface Props {
  readonly terminals: readonly Terminal[];
  readonly onChange: (step: Step) => void;
}

/** The wire of what was answered, each a terminal that can be opened again. */
export function Wire({ terminals, onChange }: Props) {
  return (
    <>
      {terminals.map((terminal) => (
        <li class="terminal" id={`terminal-${terminal.step.id}`} key={terminal.step.id}>
          <span class="terminal-what">{terminal.step.short}</span>
          <span class="terminal-said">{said(terminal)}</span>
          <button type="button" class="plain terminal-change" onClick={() => onChange(terminal.step)}>
            change<span class="sr-only"> the answer to “{terminal.step.short}”</span>
          </button>
        </li>
      ))}
    </>
  );
}
