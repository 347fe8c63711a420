import { tonesOff } from '../../steps/profile/tones-off.ts';
import { tonesRunning } from '../../steps/profile/tones-running.ts';
import { topStep } from '../../steps/profile/top-step.ts';
import type { Step } from '../../steps/step.ts';
import { rearPair } from '../../steps/unit/rear-pair.ts';
import type { Property } from './profile.ts';

/** The step that reads each property of a stored profile. */
export const STEP_THAT_READS = {
  boosted: tonesOff,
  rear: rearPair,
  sameEq: tonesRunning,
  lowered: topStep,
} as unknown as Readonly<Record<Property, Step>>;
