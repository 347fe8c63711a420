import type { Findings } from '../steps/outcome.ts';
import { tonesOff } from '../steps/profile/tones-off.ts';
import { tonesRunning } from '../steps/profile/tones-running.ts';
import { topStep } from '../steps/profile/top-step.ts';
import { rearPair } from '../steps/unit/rear-pair.ts';

/** A case, as far as its findings go. */
interface Of {
  readonly findings: Findings;
}

/** The readings to expect, from the bands of the steps themselves. */
const now = ({ findings }: Of) => ({ rig: findings.rig, facts: {} });
export const expectRear = (c: Of) => `a tone on the rear pairs, fader in the middle. ${rearPair.healthy({}, now(c))}`;
export const expectTones = (c: Of) =>
  `80 Hz and 400 Hz on a front pair, one low step, engine off. ${tonesOff.healthy({}, now(c))}`;
export const expectEngine = (c: Of) => `The same tones, engine running. ${tonesRunning.healthy({}, now(c))}`;
export const expectFull = (c: Of) => `the loudest clean step at 80 Hz on a front pair. ${topStep.healthy({}, now(c))}`;
