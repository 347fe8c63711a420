import { upperFirst } from '../../compute/first-letter.ts';
import type { Findings } from '../../steps/outcome.ts';
import { expectEngine, expectFull, expectRear, expectTones } from '../expect.ts';
import { deliveredIn, JOB_CARD, readLines, UPDATES } from '../read-lines.ts';
import type { Sheet } from '../verdict.ts';

/** The paper for a counter after a reading: what the head unit does, and how somebody else reads the same. */
export function profileSheet(findings: Findings, what: string): Sheet {
  const c = { findings };
  return {
    parts: [
      {
        title: 'For whoever works on the head unit',
        lines: [
          `${['Factory head unit', ...deliveredIn(findings)].join(', ')}.`,
          what,
          ...readLines(findings),
          'Please change nothing for these readings alone: what a build needs depends on what drives its speakers.',
          JOB_CARD,
        ],
      },
      { title: 'Ask whoever works on the bike', lines: [UPDATES] },
      {
        title: 'To read it again',
        lines: [
          `Bass boost: ${expectTones(c)}`,
          `Rear channels: ${expectRear(c)}`,
          `Level: ${expectFull(c)}`,
          `EQ with the engine: ${expectEngine(c)}`,
        ].map(upperFirst),
      },
    ],
  };
}
