import { type Findings, is } from '../outcome.ts';

/** Whether the rear is there at times, as it was told. What plays just now on such a bike clears nothing. */
export const rearComesAndGoes = (f: Findings): boolean =>
  is(f, 'rear-history', 'comes-and-goes') ||
  is(f, 'when-silent', 'bumps', 'wet', 'hot', 'steering', 'running', 'loud', 'quiet', 'unknown');

/** Whether somebody who listened just now heard it play. */
const playsNow = (f: Findings): boolean =>
  is(f, 'which-silent', 'plays') ||
  is(f, 'which-corner', 'plays') ||
  is(f, 'fader-centre', 'plays') ||
  is(f, 'rear-control', 'plays') ||
  is(f, 'lid-check', 'plays') ||
  is(f, 'four-corners', 'all') ||
  is(f, 'four-corners@front', 'all') ||
  // What was silent until then plays by what was done to it.
  (!is(f, 'when-silent', 'always') && (is(f, 'swap-sides-in', 'plays') || is(f, 'swap-sides-out', 'plays')));

/** It comes and goes, and was looked at while it is there: whatever is in order then may not be when it is gone. */
export const lookedAtWhilePlaying = (f: Findings): boolean => rearComesAndGoes(f) && playsNow(f);

/** A bump or the steering opens it, and it plays at the stand: whatever is read there reads well. */
export const wholeAtTheStand = (f: Findings): boolean => is(f, 'when-silent', 'bumps', 'steering') && playsNow(f);
