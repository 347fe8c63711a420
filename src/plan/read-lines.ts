import { upperFirst } from '../compute/first-letter.ts';
import type { Findings } from '../steps/outcome.ts';
import { metersDigit } from '../steps/tools/meter-digit.ts';
import { propertyIn } from './demand.ts';
import { measuredProfile, PROPERTIES, profileNow } from './profile/profile.ts';
import { readingBehind } from './read-values.ts';

/* Lines that every paper for a counter has, whether it comes from a plan or from a reading. */

export const JOB_CARD =
  'Please write on the job card what is stored then: rear on or off, level, bass boost, EQ with the engine.';
export const UPDATES = 'Does an update at the dealer undo the stored profile? Have it read before and after each.';

/** What the bike was built with, as far as anybody said. */
export const deliveredIn = ({ rig }: Findings): readonly string[] => [
  ...(rig.deliveredWith
    ? [`built with ${rig.deliveredWith === 'two' ? 'front speakers only' : 'front and rear speakers'}`]
    : []),
  ...(rig.deliveredAmp === 'yes' ? ['built with an amplifier'] : []),
];

/** What was read of the stored profile, or told where nothing was, a line each. */
export function readLines(findings: Findings): readonly string[] {
  const measured = measuredProfile(findings);
  const read = PROPERTIES.flatMap((property) => {
    const behind = readingBehind(property, findings);
    if (behind === '') return [];
    const found = measured[property];
    return [`${upperFirst(behind)}: ${found === 'unknown' ? 'unclear' : propertyIn(property, found === 'yes')}.`];
  });
  if (read.length === 0) {
    const now = profileNow(findings);
    const told = PROPERTIES.filter((property) => now[property] !== 'unknown').map((property) =>
      propertyIn(property, now[property] === 'yes'),
    );
    return [
      told.length > 0 ? `Nothing was read. Told: ${told.join(', ')}.` : 'Nothing was read. Please read it first.',
    ];
  }
  const digit = findings.facts[metersDigit.id];
  const shown = digit && 'option' in digit ? `, meter shows ${digit.option} V` : '';
  return [...read, `Read across a front pair at the head unit${shown}.`];
}
