import type { Remedy } from '../../causes/cause.ts';
import { figureText } from '../../causes/figure.ts';
import { proofFor } from '../../causes/proof-of-cure.ts';
import type { Certainty } from '../../inference/certainty.ts';
import type { CautionId } from '../../steps/cautions.ts';
import { CERTAINTY_WORDS } from '../flow/HowSure.tsx';
import type { Section } from '../flow/Sheet.tsx';
import { factSection, fixSections } from '../flow/sheet-sections.ts';
import type { Check, FaultView } from './view.ts';

interface Known {
  readonly certainty: Certainty;
  readonly howSure: string;
  readonly split: Check | undefined;
  readonly cautions: readonly CautionId[];
  readonly assumed: readonly string[];
}

/** A verdict as it is taken along: the same facts, verdict, numbers and cautions as on the screen. */
export function causeSections(
  { standing, hasMeter }: Pick<FaultView, 'standing' | 'hasMeter'>,
  remedy: Remedy,
  { certainty, howSure, split, cautions, assumed }: Known,
): readonly Section[] {
  const { first, sensed, other } = proofFor(remedy.proofOfCure, hasMeter);
  return [
    { title: 'Verdict', lines: [remedy.what, `${CERTAINTY_WORDS[certainty]}. ${howSure}`] },
    { title: 'The check that tells', lines: split === undefined ? [] : [split.text] },
    ...fixSections({ ...remedy, cautions }),
    { title: 'Numbers for this bike', lines: remedy.numbers.map((figure) => `${figure.label}: ${figureText(figure)}`) },
    {
      title: 'Prove the cure',
      lines: [first, ...(sensed ? [sensed] : []), ...(other ? [`${other.title}: ${other.text}`] : [])],
    },
    factSection(standing),
    { title: 'Assumed', lines: assumed },
  ];
}
