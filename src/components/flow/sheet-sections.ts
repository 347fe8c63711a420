import type { Standing } from '../../case/standing.ts';
import { CAUTIONS, type CautionId } from '../../steps/cautions.ts';
import { inWords } from '../../steps/step.ts';
import { byWord } from '../caution/signal-words.ts';
import { minutesInWords } from './minutes.ts';
import type { Section } from './Sheet.tsx';
import { said } from './said.ts';

/** What of a verdict every sheet has, whatever it was worked out by. */
interface Fix {
  readonly fix: readonly string[];
  readonly tools: string;
  readonly minutes: number;
  readonly who: string;
  readonly parts: readonly string[];
  readonly notBuy: readonly string[];
  readonly ifDoneAnyway?: string | undefined;
  readonly cautions: readonly CautionId[];
}

export const cautionSection = (cautions: readonly CautionId[]): Section => ({
  title: 'Cautions',
  lines: byWord(cautions).flatMap(([word, own]) => own.map((id) => `${word.toUpperCase()}: ${CAUTIONS[id]}`)),
});

/** Cautions come before the work that they are for. */
export const fixSections = ({
  fix,
  tools,
  minutes,
  who,
  parts,
  notBuy,
  ifDoneAnyway,
  cautions,
}: Fix): readonly Section[] => [
  cautionSection(cautions),
  { title: 'Do this', lines: fix, numbered: true },
  { title: 'What it takes', lines: [`${tools}; ${minutesInWords(minutes)}`, ...parts, who] },
  { title: 'Don’t pay for', lines: [...notBuy, ...(ifDoneAnyway ? [ifDoneAnyway] : [])] },
];

/** What was found on this bike, each answer as it was given. */
export const factSection = (standing: Standing): Section => ({
  title: 'What was found',
  lines: [
    ...standing.terminals.map((terminal) => `${inWords(terminal.step.short, standing)}: ${said(terminal, true)}`),
    ...standing.notes.map((note) => `Note: ${note}`),
  ],
});
