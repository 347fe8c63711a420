import { type Findings, is } from '../outcome.ts';
import { lookedAtWhilePlaying } from '../told/comes-and-goes.ts';

/**
 * Whether something can be learnt by giving the rear what the front of the same amplifier has: over a run that is open
 * nothing plays, and what plays just now plays on any plug.
 */
export const frontMayServeRear = (f: Findings): boolean =>
  is(f, 'front-drive', 'same') &&
  !is(f, 'amp-light', 'off', 'fault', 'blinks') &&
  !is(f, 'run-ohms', 'open') &&
  !is(f, 'pop-run', 'dead') &&
  !lookedAtWhilePlaying(f);
