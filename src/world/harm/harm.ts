import type { World } from '../state.ts';

/** One way in which a repair hurts somebody or something: what was sound before, or nobody's business, is wrong after it. */
export interface Harm {
  readonly id: string;
  readonly says: string;
  does(before: World, after: World): boolean;
}
