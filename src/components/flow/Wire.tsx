import type { Flow } from '../../../machines/rows.ts';
import type { Terminal } from '../../case/standing.ts';
import type { Situation, Step } from '../../steps/step.ts';

/** What was answered on a terminal: the outcome in words, and the readings behind it. */
export function said({ step, answer, outcome }: Terminal, named = false): string {
  if ('cannot' in answer) return step.kind === 'rig' || step.minutes < 1 ? 'not known' : 'could not be done';
  const words = step.outcomes[outcome] ?? outcome;
  if (step.kind !== 'reading' || !('readings' in answer)) return words;
  const readings = Object.entries(step.readings).flatMap(([name, { unit, label }]) => {
    const text = answer.readings[name];
    const written = text && (/[a-zΩ]\s*$/i.test(text) ? text : `${text} ${unit}`);
    return written ? [named ? `${label.toLowerCase()} ${written}` : written] : [];
  });
  return `${words} (${readings.join(', ')})`;
}

/** What "my bike" knows and the flow therefore does not ask. */
export const fromMyBike = (flow: Flow, { rig, facts }: Situation): readonly string[] =>
  [...flow.steps.values()].flatMap((step) => {
    const known = step.kind === 'rig' && !facts[step.id] ? step.known(rig) : undefined;
    return known === undefined ? [] : [`${step.short.toLowerCase()}: ${step.outcomes[known] ?? known}`];
  });

interface Props {
  /** What was not asked because it is known of the bike. */
  readonly known: readonly string[];
  readonly root: string;
  readonly terminals: readonly Terminal[];
  readonly onChange: (step: Step) => void;
}

/** The wire of what was answered, each a terminal that can be opened again. */
export function Wire({ known, root, terminals, onChange }: Props) {
  return (
    <>
      {known.length > 0 && (
        <li class="terminal">
          <span class="terminal-what">From “My bike”</span>
          <span class="terminal-said">{known.join('; ')}</span>
          <a class="terminal-change" href={`${root}my-bike/`}>
            change<span class="sr-only"> what is saved as my bike</span>
          </a>
        </li>
      )}
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
