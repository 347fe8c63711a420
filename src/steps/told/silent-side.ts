import { type Axle, CORNERS, type Corner } from '../../rig/corner.ts';
import { answeredWith } from '../outcome.ts';
import type { Facts, Situation } from '../step.ts';

/** The side that was told to be silent alone. */
export const toldSilentSide = (facts: Facts): 'left' | 'right' | undefined =>
  (['left', 'right'] as const).find((side) => answeredWith(facts, 'which-silent', side));

const toldCorner = (facts: Facts): string | undefined => {
  const answer = facts['which-corner'];
  return answer && 'option' in answer ? answer.option : undefined;
};

/** The speaker that was told to be silent, where it is one. */
export const toldSilent = (facts: Facts): Corner | undefined => CORNERS.find((corner) => corner === toldCorner(facts));

/** The side that was told to be silent as a whole. */
export const toldWholeSide = (facts: Facts): 'left' | 'right' | undefined =>
  (['left', 'right'] as const).find((side) => side === toldCorner(facts));

/** Whether a silent speaker is on this axle, or may be. */
export function concernsAxle({ facts }: Pick<Situation, 'facts'>, axle: Axle): boolean {
  const told = toldCorner(facts);
  if (told === 'thin') return false;
  const only = (['front', 'rear'] as const).find((one) => told?.startsWith(one));
  return only === undefined || only === axle;
}

/** “the front left speaker”, “the left side”; or other words where nobody was asked for a corner. */
export const silentOnes = ({ facts }: Pick<Situation, 'facts'>, otherwise: string): string => {
  if (toldCorner(facts) === 'plays') return 'the speaker that cuts out';
  const told = toldSilent(facts);
  if (told) return `the ${told.replace('-', ' ')} speaker`;
  const side = toldWholeSide(facts);
  return side ? `the ${side} side` : otherwise;
};
