import { leftAndRight } from '../left-and-right.ts';
import type { Say } from '../observer.ts';
import { OUTPUT, TONE } from '../one-volume-step.ts';

export const sayOutputSides: Say = (asked) => leftAndRight(asked, OUTPUT, TONE);
