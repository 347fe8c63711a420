import type { Standing, Terminal } from '../../case/standing.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import { inWords, type Situation, type Step } from '../../steps/step.ts';
import { said } from './said.ts';

/** What "my bike" knows and the flow therefore does not ask. */
export const fromMyBike = (
  { steps }: { readonly steps: ReadonlyMap<string, Step> },
  { findings, facts }: Pick<Standing, 'findings' | 'facts'>,
): readonly string[] =>
  [...steps.values()].flatMap((step) => {
    const known = step.kind === 'rig' && !facts[step.id] ? outcomeNamed(findings, step.id) : undefined;
    return known === undefined
      ? []
      : [`${inWords(step.short, findings).toLowerCase()}: ${step.outcomes[known] ?? known}`];
  });

interface Props {
  /** What was not asked because it is known of the bike. */
  readonly known: readonly string[];
  readonly root: string;
  readonly terminals: readonly Terminal[];
  readonly situation: Situation;
  readonly onReopen: (step: Step) => void;
}

/** The wire of what was answered, each a terminal: the whole row opens it again. */
export function Wire({ known, root, terminals, situation, onReopen }: Props) {
  return (
    <>
      {known.length > 0 && (
        <li class="terminal">
          <a href={`${root}my-bike/`}>
            <span class="terminal-what">From “My bike”</span> <span class="terminal-said">{known.join('; ')}</span>
          </a>
        </li>
      )}
      {terminals.map((terminal) => (
        <li class="terminal" id={`terminal-${terminal.step.id}`} key={terminal.step.id}>
          <button type="button" onClick={() => onReopen(terminal.step)}>
            <span class="sr-only">Answer again: </span>
            <span class="terminal-what">{inWords(terminal.step.short, situation)}</span>{' '}
            <span class="terminal-said">{said(terminal)}</span>
          </button>
        </li>
      ))}
    </>
  );
}
