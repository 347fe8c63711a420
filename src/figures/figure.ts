import type { Plot } from '../calculators/picture.ts';

export interface Figure {
  readonly plot: Plot;
  /** What it shows, for whoever cannot see it. */
  readonly says: string;
}
