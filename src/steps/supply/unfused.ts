import { upperFirst } from '../../compute/first-letter.ts';
import { ampPair } from '../fitted/the-amp.ts';
import type { Facts, Situation } from '../step.ts';

/* A lead from the battery in which somebody looked for a fuse and found none. */

const saysNone = (facts: Facts, key: string): boolean => {
  const answer = facts[key];
  return answer !== undefined && 'option' in answer && answer.option === 'none';
};

/** Whether any lead of the bike has none: until it has, that is what the rider has to know first. */
export const isUnfused = (facts: Facts): boolean =>
  Object.keys(facts).some((key) => /^fuse-look(@|$)/.test(key) && saysNone(facts, key));

/** Whether the lead of the amplifier that is spoken of has none. */
export function isLeadUnfused(situation: Situation): boolean {
  const { amp: _, ...meant } = situation;
  const pair = ampPair(situation);
  return (
    saysNone(situation.facts, `fuse-look@${pair}`) ||
    (pair === ampPair(meant) && saysNone(situation.facts, 'fuse-look'))
  );
}

/** The battery negative comes off first, and goes back on last. */
const IN_ITS_PLACE: readonly (readonly [RegExp, string])[] = [
  [/battery negative on, main fuse last/gi, 'lead back on through a fuse, battery negative last'],
  [/main fuse out(, battery negative off)?/gi, 'battery negative off, lead off the positive post'],
  [/main fuse and line-level plugs out/gi, 'battery negative off, lead off the positive post, line-level plugs out'],
  [/fuse back( in)?/gi, 'lead back on through a fuse, battery negative last'],
];

/** What is said of the main fuse, on a bike whose lead has none: it is the lead that comes off. */
export const ofTheLead = (text: string, situation: Situation): string =>
  isLeadUnfused(situation)
    ? IN_ITS_PLACE.reduce(
        (so, [fuse, lead]) => so.replace(fuse, (found) => (/^[A-Z]/.test(found) ? upperFirst(lead) : lead)),
        text,
      )
    : text;
