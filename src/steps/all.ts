import { modulesBelow } from '../compute/modules-below.ts';
import { AMP_GROUPS, type AmpGroup } from './plan/amp-groups.ts';
import { ampKindStep } from './plan/amp-kind.ts';
import { ampNeedsStep } from './plan/amp-needs.ts';
import { ampSignalStep } from './plan/amp-signal.ts';
import { ampTurnOnStep } from './plan/amp-turn-on.ts';
import type { Step } from './step.ts';
import { eachOf } from './subject.ts';

/** Questions that are asked of each amplifier of a planned build: one step for each group of amplifiers. */
const OF_A_GROUP = [ampKindStep, ampTurnOnStep, ampSignalStep, ampNeedsStep];
const ofEachGroup = (Object.keys(AMP_GROUPS) as AmpGroup[]).flatMap((group) => OF_A_GROUP.map((of): Step => of(group)));

const isStep = (exported: unknown): exported is Step =>
  typeof exported === 'object' && exported !== null && 'ask' in exported && 'outcomes' in exported;
const constants = (await modulesBelow(import.meta.url)).flatMap(([, exported]) =>
  Object.values(exported).filter(isStep).flatMap(eachOf),
);

/** Every step by its id, for tools, tests and the proof. A page loads the steps of its own flow and no others. */
export const ALL_STEPS: Readonly<Record<string, Step>> = Object.fromEntries(
  [...constants, ...ofEachGroup].map((step) => [step.id, step]),
);
