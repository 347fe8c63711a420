import type { Case } from '../../case/events.ts';
import type { Standing, Terminal } from '../../case/standing.ts';
import { dayInWords } from '../../rig/day.ts';
import type { Rig } from '../../rig/rig.ts';
import { outcomeNamed } from '../../steps/outcome.ts';
import { type Facts, inWords, type Situation, type Step } from '../../steps/step.ts';
import { said } from './said.ts';

/** The bike as the case was begun with it. */
const begunWith = ({ events }: Case): Rig => events.findLast((event) => event.type === 'rig')?.rig ?? {};

/** What "my bike" knows and the flow therefore does not ask. What an answer says of the bike besides is not from there. */
export const fromMyBike = (
  { steps }: { readonly steps: ReadonlyMap<string, Step> },
  { findings, facts, rig }: Pick<Standing, 'findings' | 'facts' | 'rig'>,
  it: Case,
): readonly string[] => [
  ...[...steps.values()].flatMap((step) => {
    if (step.kind !== 'rig' || facts[step.id]) return [];
    const known = step.known(begunWith(it));
    return known === undefined || known !== outcomeNamed(findings, step.id)
      ? []
      : [`${inWords(step.short, findings).toLowerCase()}: ${step.outcomes[known] ?? known}`];
  }),
  ...readingsIn(facts, rig),
];

/** When the readings were taken that were saved with the bike and count here. */
const readingsIn = (facts: Facts, { profileRead }: Rig): readonly string[] =>
  profileRead && Object.entries(profileRead.answers).some(([id, answer]) => facts[id] === answer)
    ? [`stored profile: read on ${dayInWords(profileRead.on)}`]
    : [];

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
