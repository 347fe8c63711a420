import { answeredWith, type Findings, is } from '../outcome.ts';
import type { Situation } from '../step.ts';

/** Whether somebody saw that the head unit stays dark, whichever flow asked: it wakes nothing then, whatever is wrong. */
export const unitIsDark = ({ facts }: Situation): boolean => answeredWith(facts, 'unit-screen', 'dark');

/** Whether it runs, as far as anybody looked: then its settings and what it sends can be asked about. */
export const unitRuns = (f: Findings): boolean => !is(f, 'unit-screen', 'dark', 'hung', 'restarts');
