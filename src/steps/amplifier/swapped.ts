import type { Situation } from '../step.ts';
import { toldSilent } from '../told/silent-side.ts';

/** “front” or “rear”, where one speaker was told. */
export const pairIn = ({ facts }: Situation): string => {
  const told = toldSilent(facts);
  return told ? `${told.split('-', 1)[0]} ` : '';
};

export const SWAPPED = {
  moves: 'the silence moves',
  stays: 'the same speaker stays silent',
  plays: 'both play',
} as const;
export const SWAP_OPTIONS = {
  moves: 'Now the other one is silent',
  stays: 'The same speaker is silent',
  plays: 'Both play now',
} as const;
