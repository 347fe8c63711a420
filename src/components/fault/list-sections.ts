import { cautionsOfCheck } from '../../causes/action-cautions.ts';
import type { CautionId } from '../../steps/cautions.ts';
import { inWords, type Step } from '../../steps/step.ts';
import type { Section } from '../flow/Sheet.tsx';
import { cautionSection, factSection } from '../flow/sheet-sections.ts';
import { shareInWords } from './shares.ts';
import type { FaultView } from './view.ts';

/** The cautions of the checks of a list, each once, at the first check that asks for it. */
export function cautionsByCause(view: FaultView, causes: readonly string[]): ReadonlyMap<string, readonly CautionId[]> {
  const said = new Set<CautionId>();
  return new Map(
    causes.map((id) => {
      const cause = view.causeOf(id);
      const own = cause ? cautionsOfCheck(cause, view.standing.findings).filter((one) => !said.has(one)) : [];
      for (const one of own) said.add(one);
      return [id, own];
    }),
  );
}

/** What tells most where nobody has measured it yet. */
export const measuredFirst = ({ flow, standing }: Pick<FaultView, 'flow' | 'standing'>): readonly Step[] =>
  (standing.decided?.reckoning?.measureFirst ?? []).flatMap((id) => flow.steps.get(id) ?? []);

/** A list as it is taken along: who is left, each with its check, and what was found. */
export function listSections(view: FaultView, causes: readonly string[], title: string): readonly Section[] {
  const { standing } = view;
  const checks = causes.map((cause) => {
    const check = view.checkOf(cause);
    const against = view.splitOf(cause)?.isAgainst ? ', although its check came out against it' : '';
    const ruledOut = view.ruledOut.has(cause) ? ' Ruled out.' : '';
    return `${view.nameOf(cause)}, ${shareInWords(view.shareOf(cause))}${against}.${ruledOut}${check === undefined ? '' : ` ${check}`}`;
  });
  return [
    { title: 'What is known', lines: [`${title}. Not proved: nothing is bought or booked before a check says which.`] },
    cautionSection([...cautionsByCause(view, causes).values()].flat()),
    { title: 'Left, each with the check that tells', lines: checks, numbered: true },
    { title: 'To be measured first', lines: measuredFirst(view).map((step) => inWords(step.ask, standing)) },
    factSection(standing),
  ];
}
