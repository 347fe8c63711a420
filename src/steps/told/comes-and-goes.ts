import { type Findings, is } from '../outcome.ts';

/** Whether the rear is there at times, as it was told. What plays just now on such a bike clears nothing. */
export const rearComesAndGoes = (f: Findings): boolean =>
  is(f, 'rear-history', 'comes-and-goes') ||
  is(f, 'when-silent', 'bumps', 'wet', 'hot', 'steering', 'running', 'loud', 'quiet', 'unknown');
