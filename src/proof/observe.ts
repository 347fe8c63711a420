import type { Answer, Situation, Step } from '../steps/step.ts';
import type { Ridden } from '../world/symptoms/index.ts';

/** What somebody sees and says at a bike. */
export type Observe = (step: Step, bike: Ridden, situation: Situation) => Answer;
