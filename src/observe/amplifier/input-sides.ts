import { leftAndRight } from '../left-and-right.ts';
import type { Say } from '../observer.ts';
import { INPUT, TONE } from '../one-volume-step.ts';

export const sayInputSides: Say = (asked) => leftAndRight(asked, INPUT, TONE);
