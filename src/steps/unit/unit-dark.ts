import { answeredWith } from '../outcome.ts';
import type { Situation } from '../step.ts';

/** Whether somebody saw that the head unit stays dark, whichever flow asked: it wakes nothing then, whatever is wrong. */
export const unitIsDark = ({ facts }: Situation): boolean => answeredWith(facts, 'unit-screen', 'dark');
